// The fields of the outside: a rectangle, or a belt round everything that is bolted; a window and an edge notch.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';

export function outsideFields(f: FieldKit) {
  const group = 'Outside';
  const rectangle = { field: 'shape', values: ['rectangle'] } as const;
  return {
    shape: f.choice({
      title: 'Shape',
      help: 'rectangle: by width and height; hull: a belt with round corners, drawn tight round holes, slots and openings.',
      group,
      choices: [
        { value: 'rectangle', label: 'Rectangle' },
        { value: 'hull', label: 'Hull round the holes' },
      ],
      default: 'rectangle',
    }),
    width: f.length.given({
      title: 'Width',
      help: 'Of the rectangle, from left to right.',
      measuring: 'The room there is: caliper or tape between what stands beside it, less play.',
      group,
      min: 15,
      max: 3000,
      usual: [260, 340],
      default: '280 mm',
      appliesWhen: rectangle,
    }),
    height: f.length.given({
      title: 'Height',
      help: 'Of the rectangle, from bottom to top.',
      measuring: 'The room there is, less play.',
      group,
      min: 15,
      max: 3000,
      usual: [195, 240],
      default: '200 mm',
      appliesWhen: rectangle,
    }),
    corner: f.length.given({
      title: 'Corner radius',
      help: 'Radius of the outside corners; 0 leaves them sharp. 2 mm and more keeps skin whole.',
      group,
      min: 0,
      max: 1500,
      default: '12 mm',
      appliesWhen: rectangle,
    }),
    edge: f.length.maybe({
      title: 'Edge distance',
      help: 'Of the hull, from hole centres to the outside. Left out: two bolt diameters, and metal of 1.5 thicknesses.',
      group,
      min: 2,
      max: 300,
      appliesWhen: { field: 'shape', values: ['hull'] },
    }),
  };
}

const windowGroup = 'Window';

const windowSchema = (f: FieldKit) =>
  z.strictObject({
    width: f.length.given({
      title: 'Window width',
      help: 'From left to right.',
      measuring: 'What has to pass, and the room it needs.',
      group: windowGroup,
      min: 5,
      max: 2500,
      default: '60 mm',
    }),
    height: f.length.given({
      title: 'Window height',
      help: 'From bottom to top.',
      measuring: 'What has to pass, and the room it needs.',
      group: windowGroup,
      min: 5,
      max: 2500,
      default: '40 mm',
    }),
    corner: f.length.given({
      title: 'Window corner radius',
      help: 'The torch leaves half a kerf at least; 3 mm and more cuts cleaner.',
      group: windowGroup,
      min: 0,
      max: 1000,
      default: '5 mm',
    }),
    x: f.length.given({
      title: 'Window right of the middle',
      help: 'Its middle from the plate’s middle; negative to the left.',
      group: windowGroup,
      min: -1500,
      max: 1500,
      default: '0 mm',
    }),
    y: f.length.given({
      title: 'Window above the middle',
      help: 'Its middle from the plate’s middle; negative downwards.',
      group: windowGroup,
      min: -1500,
      max: 1500,
      default: '0 mm',
    }),
  });

const notchGroup = 'Edge notch';

const notchSchema = (f: FieldKit) =>
  z.strictObject({
    side: f.choice({
      title: 'Notch in',
      help: 'The edge that it is cut into; rectangles only.',
      group: notchGroup,
      choices: [
        { value: 'top', label: 'Top edge' },
        { value: 'bottom', label: 'Bottom edge' },
        { value: 'left', label: 'Left edge' },
        { value: 'right', label: 'Right edge' },
      ],
      default: 'top',
    }),
    width: f.length.given({
      title: 'Notch width',
      help: 'Along the edge.',
      measuring: 'What has to pass: tube, cable or rail, and the room it needs.',
      group: notchGroup,
      min: 2,
      max: 2500,
      default: '30 mm',
    }),
    depth: f.length.given({
      title: 'Notch depth',
      help: 'From the edge inwards.',
      group: notchGroup,
      min: 1,
      max: 2500,
      default: '15 mm',
    }),
    corner: f.length.given({
      title: 'Notch corner radius',
      help: 'Inside corners; the torch leaves half a kerf at least.',
      group: notchGroup,
      min: 0,
      max: 500,
      default: '3 mm',
    }),
    at: f.length.given({
      title: 'Notch from the middle of the edge',
      help: 'To the right or up; negative the other way.',
      group: notchGroup,
      min: -1500,
      max: 1500,
      default: '0 mm',
    }),
  });

export function openingFields(f: FieldKit) {
  return {
    window: f.maybeGroup(windowSchema(f), {
      title: windowGroup,
      help: 'A rectangular opening with round corners.',
      group: windowGroup,
    }),
    notch: f.maybeGroup(notchSchema(f), {
      title: notchGroup,
      help: 'A rectangular notch in one edge.',
      group: notchGroup,
    }),
  };
}
