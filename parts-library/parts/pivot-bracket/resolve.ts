// A pivot bracket worked out: hole, nose, outside, foot laid flat, foot holes; or what does not go together.
import {
  bendAllowance,
  clearanceHole,
  findThread,
  outsideSetback,
  type Thread,
} from '../../handbook/index.js';
import type { Unit } from '../../units/index.js';
import type { PlacedHole } from '../shared/bolted.js';
import { drawEar, type EarOutline } from '../shared/ear-outline.js';
import { sizeHole, type SizedHole } from '../shared/holes.js';
import { refusal, rememberResolved, type Resolved } from '../shared/resolved.js';
import { roundText } from '../shared/words.js';
import { legOf } from '../shared/weld-edge-fields.js';
import type { PivotBracket } from './parameters.js';

export interface BentFoot {
  readonly allowance: number;
  readonly setback: number;
  /** Middle of the bend, and where it begins on the foot’s side, y in mm. */
  readonly bendAt: number;
  readonly bendFrom: number;
}

export interface ResolvedBracket {
  readonly pin: Thread;
  /** What presses on the ear, its hole as finished and as cut, mm. */
  readonly pressing: number;
  readonly finished: number;
  readonly cut: number;
  readonly nose: number;
  readonly ear: EarOutline;
  /** Lower end of the plate in the flat, y in mm: 0 for a weld edge. */
  readonly footEnd: number;
  readonly bend: BentFoot | undefined;
  readonly size: SizedHole;
  readonly holes: readonly PlacedHole[];
}

/** Metal round the hole when no nose is given, thicknesses; and the edge distance of a pivot bolt, diameters. */
const USUAL_WEB = 2;
const USUAL_EDGE = 2;

interface PivotHole {
  readonly pressing: number;
  readonly finished: number;
  readonly cut: number;
}

function pivotHole(p: PivotBracket, pin: Thread): PivotHole | string {
  if (p.pivot === 'bolt') {
    const hole = clearanceHole(pin, 'close');
    return hole.found
      ? { pressing: pin.diameter, finished: hole.row.diameter, cut: hole.row.diameter }
      : hole.says;
  }
  const outside = p.outside.mm;
  return p.pivot === 'tube'
    ? { pressing: outside, finished: outside + p.fit.mm, cut: outside + p.fit.mm }
    : { pressing: outside, finished: outside, cut: outside - p.boreAllowance.mm };
}

/** The bend laid flat: the ear’s straight side begins at y = 0. */
function bentFoot(p: PivotBracket): BentFoot | undefined {
  if (p.foot !== 'bent') return undefined;
  const allowance = bendAllowance(90, p.radius.mm, p.thickness.mm, p.kFactor.value);
  return {
    allowance,
    setback: outsideSetback(90, p.radius.mm, p.thickness.mm),
    bendAt: -allowance / 2,
    bendFrom: -allowance,
  };
}

function work(p: PivotBracket): Resolved<ResolvedBracket> {
  const pin = findThread(p.pin);
  if (!pin.found) return refusal('pin', pin.says);
  const hole = pivotHole(p, pin.row);
  if (typeof hole === 'string') return refusal('pin', hole);
  if (hole.cut <= 0)
    return refusal(
      'boreAllowance',
      `Cut ${roundText(p.boreAllowance.mm)} mm under ⌀${roundText(p.outside.mm)} mm nothing is left to cut; less to bore would do.`,
    );
  const size = sizeHole(p);
  if (typeof size === 'string') return refusal('bolt', size);
  const nose =
    p.nose?.mm ??
    Math.max(
      hole.finished / 2 + USUAL_WEB * p.thickness.mm,
      p.pivot === 'bolt' ? USUAL_EDGE * pin.row.diameter : 0,
    );
  if (nose <= hole.finished / 2)
    return refusal(
      'nose',
      `A nose of radius ${roundText(nose)} mm leaves no metal round a pivot hole of ⌀${roundText(hole.finished)} mm; a larger nose or a smaller pivot would do.`,
    );
  const bend = bentFoot(p);
  const foot =
    p.foot === 'weld'
      ? 0
      : bend === undefined
        ? p.footDepth.mm
        : bend.allowance + p.footDepth.mm - bend.setback;
  if (bend !== undefined && p.footDepth.mm <= bend.setback)
    return refusal(
      'footDepth',
      `The bend takes up ${roundText(bend.setback)} mm of a foot of ${roundText(p.footDepth.mm)} mm; a longer one or a smaller radius would do.`,
    );
  const above = p.height.mm - (bend === undefined ? foot : bend.setback);
  if (above <= 0)
    return refusal(
      'height',
      `The foot takes up ${roundText(p.height.mm - above)} mm of a pivot height of ${roundText(p.height.mm)} mm; a higher pivot or a lower foot would do.`,
    );
  const ear = drawEar({
    base: p.base.mm,
    height: above,
    nose,
    lean: p.lean.mm,
    tube: p.foot === 'weld' && p.edge === 'coped' ? p.tube.mm : undefined,
    foot,
  });
  if (!ear.ok) return ear;
  const holes: readonly PlacedHole[] =
    p.foot === 'weld'
      ? []
      : Array.from({ length: p.bolts }, (_, index) => ({
          featureId: `foot.${index + 1}`,
          at: { x: (index - (p.bolts - 1) / 2) * p.spacing.mm, y: -foot + p.inset.mm },
        }));
  return {
    ok: true,
    value: { pin: pin.row, ...hole, nose, ear: ear.value, footEnd: -foot, bend, size, holes },
  };
}

export const resolveBracket = rememberResolved(work, 'height');

export const thinnerOf = (p: PivotBracket): number => Math.min(p.thickness.mm, p.wall.mm);

export const filletOf = (p: PivotBracket, unit: Unit): number => legOf(p.weldLeg, thinnerOf(p), unit);

export const gapOf = (p: PivotBracket): number | undefined => (p.standoffs === 'pair' ? p.gap.mm : undefined);
