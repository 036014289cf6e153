// The drawing that stands before one is brought in: the tie plate under the haul cart's motor.
import type { Drawing, DrawnShape } from '../../model/index.js';

const QUARTER = Math.SQRT2 - 1;

const circle = (number: number, x: number, y: number, radius: number): DrawnShape => ({
  id: `circle.${number}`,
  layer: 'cut',
  operation: 'opening',
  closed: true,
  vertices: [
    { x: x + radius, y, bulge: -1 },
    { x: x - radius, y, bulge: -1 },
  ],
});

/** 160 x 90 with corners of 12, four holes for M8, a window of 50, a slot 9 wide, and the middle line etched. */
export const startDrawing: Drawing = {
  source: {
    name: 'tie-plate.dxf',
    format: 'dxf',
    unit: 'mm',
    part: 1,
    digest: 'a593d34878babed540f2e40d131d00ec81c1380e80250ee9c1c37fa973b7719b',
  },
  shapes: [
    {
      id: 'contour.1',
      layer: 'cut',
      operation: 'outline',
      closed: true,
      vertices: [
        { x: 12, y: 0, bulge: 0 },
        { x: 148, y: 0, bulge: QUARTER },
        { x: 160, y: 12, bulge: 0 },
        { x: 160, y: 78, bulge: QUARTER },
        { x: 148, y: 90, bulge: 0 },
        { x: 12, y: 90, bulge: QUARTER },
        { x: 0, y: 78, bulge: 0 },
        { x: 0, y: 12, bulge: QUARTER },
      ],
    },
    circle(1, 18, 18, 4.5),
    circle(2, 142, 18, 4.5),
    circle(3, 142, 72, 4.5),
    circle(4, 18, 72, 4.5),
    circle(5, 62, 45, 25),
    {
      id: 'contour.2',
      layer: 'cut',
      operation: 'opening',
      closed: true,
      vertices: [
        { x: 105, y: 40.5, bulge: -1 },
        { x: 105, y: 49.5, bulge: 0 },
        { x: 130, y: 49.5, bulge: -1 },
        { x: 130, y: 40.5, bulge: 0 },
      ],
    },
    {
      id: 'line.1',
      layer: 'etch',
      operation: 'etch',
      closed: false,
      vertices: [
        { x: 8, y: 45, bulge: 0 },
        { x: 28, y: 45, bulge: 0 },
      ],
    },
  ],
  notes: [],
  faults: [],
};
