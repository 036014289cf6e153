// Draws the flat pattern of a bent bracket: a strip along x, one bend line, a hole in each leg.
import { circleContour, polygonContour } from '../../geometry/index.js';
import { bendAllowance, clearanceHole, findThread, outsideSetback } from '../../handbook/index.js';
import type { Feature, Finding, Part, Staged } from '../../model/index.js';
import type { BentBracket } from './parameters.js';

export interface FlatPattern {
  /** Whole length of the strip, mm. */
  readonly length: number;
  /** Middle of the bend from the first leg's end, mm. */
  readonly bendAt: number;
  /** Length of the bent zone in the flat, mm. */
  readonly allowance: number;
  readonly setback: number;
  readonly hole: number;
}

/** Legs to flat: outside legs less their setbacks, plus the allowance. */
export function flatPatternOf(p: BentBracket): FlatPattern {
  const allowance = bendAllowance(p.bend.value, p.radius.mm, p.thickness.mm, p.kFactor.value);
  const setback = outsideSetback(p.bend.value, p.radius.mm, p.thickness.mm);
  const thread = findThread(p.bolt);
  const hole = thread.found ? clearanceHole(thread.row, 'normal') : undefined;
  return {
    length: p.legA.mm + p.legB.mm - 2 * setback + allowance,
    bendAt: p.legA.mm - setback + allowance / 2,
    allowance,
    setback,
    hole: hole?.found === true ? hole.row.diameter : thread.found ? thread.row.diameter + 1 : 0,
  };
}

const refuse = (field: string, says: string): Finding => ({
  code: 'cannot-draw',
  level: 'stop',
  stage: 'draw',
  subject: {},
  field,
  title: 'This bracket cannot be drawn',
  says,
  source: { title: 'Plane geometry', where: 'construction of the part', certainty: 'common practice' },
});

/** Parameters to the flat part; origin at the first leg's end, on the strip's middle line. */
export function drawBentBracket(p: BentBracket): Staged<Part | undefined> {
  const flat = flatPatternOf(p);
  const half = p.width.mm / 2;
  if (p.legA.mm <= flat.setback) {
    return {
      value: undefined,
      findings: [
        refuse(
          'legA',
          `The bend takes up ${flat.setback.toFixed(2)} mm of the first leg; a longer leg or a smaller radius would do.`,
        ),
      ],
    };
  }
  if (p.legB.mm <= flat.setback) {
    return {
      value: undefined,
      findings: [
        refuse(
          'legB',
          `The bend takes up ${flat.setback.toFixed(2)} mm of the second leg; a longer leg or a smaller radius would do.`,
        ),
      ],
    };
  }
  const radius = flat.hole / 2;
  const holes = [
    { id: 'legA.hole', name: 'first hole', x: p.holeA.mm, field: 'holeA' },
    { id: 'legB.hole', name: 'second hole', x: flat.length - p.holeB.mm, field: 'holeB' },
  ];
  const outsideHole = holes.find(({ x }) => x - radius <= 0 || x + radius >= flat.length || radius >= half);
  if (outsideHole !== undefined) {
    return {
      value: undefined,
      findings: [
        refuse(
          outsideHole.field,
          `A hole of ⌀${flat.hole} mm there runs out of the strip; a place further in or a wider strip would do.`,
        ),
      ],
    };
  }
  const features: readonly Feature[] = [
    {
      id: 'outline',
      name: 'outline',
      purpose: 'outline',
      contour: polygonContour(
        [
          { x: 0, y: -half },
          { x: flat.length, y: -half },
          { x: flat.length, y: half },
          { x: 0, y: half },
        ],
        { direction: 'outline' },
      ),
    },
    ...holes.map(({ id, name, x }): Feature => ({
      id,
      name,
      purpose: 'opening',
      contour: circleContour({ x, y: 0 }, radius, 'opening'),
      hole: { finish: 'cut', size: flat.hole, thread: p.bolt },
    })),
    {
      id: 'bend',
      name: 'bend line',
      purpose: 'score',
      path: {
        vertices: [
          { x: flat.bendAt, y: -half, bulge: 0 },
          { x: flat.bendAt, y: half, bulge: 0 },
        ],
      },
      bend: { degrees: p.bend.value, radius: p.radius.mm, direction: 'up' },
    },
  ];
  return {
    value: {
      family: 'bent-bracket',
      name: 'Bent bracket',
      features,
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
    },
    findings: [],
  };
}
