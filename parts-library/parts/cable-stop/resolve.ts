// A cable stop worked out: hole, slot, outside, foot; or what does not go together.
import { findThread, type Thread } from '../../handbook/index.js';
import type { Unit } from '../../units/index.js';
import { drawEar, type EarOutline } from '../shared/ear-outline.js';
import { layFoot, type LaidFoot } from '../shared/foot.js';
import { sizeHole, type SizedHole } from '../shared/holes.js';
import { refusal, rememberResolved, type Resolved } from '../shared/resolved.js';
import { legOf } from '../shared/weld-edge-fields.js';
import { roundText } from '../shared/words.js';
import type { CableStop } from './parameters.js';

export interface ResolvedStop {
  /** Finished hole at the cable, mm: of a tapped one its drill. */
  readonly hole: number;
  readonly adjuster: SizedHole | undefined;
  readonly thread: Thread | undefined;
  readonly nose: number;
  readonly ear: EarOutline;
  readonly laid: LaidFoot;
  readonly footEnd: number;
  readonly foot: SizedHole;
}

/** Metal beyond the shoulder when no nose is given, mm, and beside the hole, thicknesses. */
const BEYOND_SHOULDER = 4;
const USUAL_WEB = 2;

function work(p: CableStop): Resolved<ResolvedStop> {
  const foot = sizeHole(p);
  if (typeof foot === 'string') return refusal('bolt', foot);
  const adjuster =
    p.seat === 'thread'
      ? sizeHole({ bolt: p.adjuster, holes: { kind: 'tapped' }, holeFit: 'normal' })
      : undefined;
  if (typeof adjuster === 'string') return refusal('adjuster', adjuster);
  const hole = adjuster?.diameter ?? p.neck.mm + p.neckFit.mm;
  const nose =
    p.nose?.mm ?? Math.max(p.shoulder.mm / 2 + BEYOND_SHOULDER, hole / 2 + USUAL_WEB * p.thickness.mm);
  if (nose <= hole / 2)
    return refusal(
      'nose',
      `A nose of radius ${roundText(nose)} mm leaves no metal round a hole of ⌀${roundText(hole)} mm; a larger nose would do.`,
    );
  if (p.seat === 'slot' && p.slot.mm >= hole)
    return refusal(
      'slot',
      `A slot of ${roundText(p.slot.mm)} mm is as wide as the hole of ⌀${roundText(hole)} mm and lets the ferrule out; a narrower slot would do.`,
    );
  const laid = layFoot(p, p.height.mm);
  if (!laid.ok) return laid;
  const ear = drawEar({
    base: p.base.mm,
    height: laid.value.above,
    nose,
    lean: p.lean.mm,
    tube: p.foot === 'weld' && p.edge === 'coped' ? p.tube.mm : undefined,
    foot: laid.value.depth,
    keyhole: p.seat === 'slot' ? { hole, slot: p.slot.mm, degrees: p.slotAngle.value } : undefined,
  });
  if (!ear.ok) return ear;
  const thread = findThread(p.adjuster);
  return {
    ok: true,
    value: {
      hole,
      adjuster,
      thread: p.seat === 'thread' && thread.found ? thread.row : undefined,
      nose,
      ear: ear.value,
      laid: laid.value,
      footEnd: -laid.value.depth,
      foot,
    },
  };
}

export const resolveStop = rememberResolved(work, 'height');

export const thinnerOf = (p: CableStop): number => Math.min(p.thickness.mm, p.wall.mm);

export const filletOf = (p: CableStop, unit: Unit): number => legOf(p.weldLeg, thinnerOf(p), unit);
