// A pivot bracket worked out: hole, nose, outside, foot laid flat, foot holes; or what does not go together.
import type { Point } from '../../geometry/index.js';
import { clearanceHole, findThread, type Thread } from '../../handbook/index.js';
import type { Unit } from '../../units/index.js';
import type { PlacedHole } from '../shared/bolted.js';
import { layFoot, type BentFoot } from '../shared/foot.js';
import { drawEar, type EarOutline } from '../shared/ear-outline.js';
import { sizeHole, type SizedHole } from '../shared/holes.js';
import { pullDirection } from '../shared/pull-fields.js';
import { refusal, rememberResolved, type Resolved } from '../shared/resolved.js';
import { roundText } from '../shared/words.js';
import { legOf } from '../shared/weld-edge-fields.js';
import type { PivotBracket } from './parameters.js';

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
  const laid = layFoot(p, p.height.mm);
  if (!laid.ok) return laid;
  const { depth: foot, bend, above, holes } = laid.value;
  const ear = drawEar({
    base: p.base.mm,
    height: above,
    nose,
    lean: isMirrored(p) ? -p.lean.mm : p.lean.mm,
    tube: p.foot === 'weld' && p.edge === 'coped' ? p.tube.mm : undefined,
    foot,
  });
  if (!ear.ok) return ear;
  return {
    ok: true,
    value: { pin: pin.row, ...hole, nose, ear: ear.value, footEnd: -foot, bend, size, holes },
  };
}

export const resolveBracket = rememberResolved(work, 'height');

export const thinnerOf = (p: PivotBracket): number => Math.min(p.thickness.mm, p.wall.mm);

export const filletOf = (p: PivotBracket, unit: Unit): number => legOf(p.weldLeg, thinnerOf(p), unit);

export const gapOf = (p: PivotBracket): number | undefined =>
  p.standoffs === 'single' ? undefined : p.gap.mm;

/** A pair is cut from one drawing; only a part of its own has a hand. */
export function isMirrored(p: PivotBracket): boolean {
  return p.mirrored === 'yes' && p.standoffs !== 'pair';
}

/** Direction of the pull on the part as it is drawn, a unit vector. */
export function pullOn(p: PivotBracket): Point {
  const { x, y } = pullDirection(p.pullAngle.value);
  return { x: isMirrored(p) ? -x : x, y };
}
