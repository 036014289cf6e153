// Where the holes of a bent bracket are, in the flat.
import type { Point } from '../../geometry/index.js';
import { clearanceHole, findThread } from '../../handbook/index.js';
import type { FlatPattern, Leg } from './profile.js';
import type { BentBracket } from './parameters.js';

export interface BracketHole {
  readonly id: string;
  readonly name: string;
  readonly at: Point;
  readonly leg: Leg;
  /** The parameter that moves it. */
  readonly field: 'holeA' | 'holeB' | 'holesMiddle';
}

/** Diameter of the clearance holes, mm. */
export function holeDiameterOf(p: BentBracket): number {
  const thread = findThread(p.bolt);
  if (!thread.found) return 0;
  const hole = clearanceHole(thread.row, 'normal');
  return hole.found ? hole.row.diameter : thread.row.diameter + 1;
}

function acrossWidth(count: number, width: number, spacing: number | undefined): readonly number[] {
  const pitch = spacing ?? width / Math.max(count, 1);
  return Array.from({ length: count }, (_, index) => (index - (count - 1) / 2) * pitch);
}

/** All holes: first leg, middle, last leg. */
export function holesOf(p: BentBracket, flat: FlatPattern): readonly BracketHole[] {
  const first = flat.legs[0];
  const last = flat.legs.at(-1);
  const middle = flat.legs.find(({ field }) => field === 'middle');
  const row = (leg: Leg | undefined, count: number, x: number, width: number, field: BracketHole['field']) =>
    leg === undefined
      ? []
      : acrossWidth(count, width, p.spacing?.mm).map((y, index): BracketHole => ({
          id: `${leg.id}.hole.${index + 1}`,
          name: `hole ${index + 1} of the ${leg.name}`,
          at: { x, y },
          leg,
          field,
        }));
  return [
    ...row(first, p.holesA, p.holeA.mm, p.width.mm, 'holeA'),
    ...row(
      middle,
      p.holesMiddle,
      middle === undefined ? 0 : (middle.from + middle.to) / 2,
      p.width.mm,
      'holesMiddle',
    ),
    ...row(last, p.holesB, flat.length - p.holeB.mm, p.lastWidth?.mm ?? p.width.mm, 'holeB'),
  ];
}
