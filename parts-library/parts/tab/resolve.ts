// A tab worked out: hole, nose, outside, fillet, gap; or what does not go together.
import type { Unit } from '../../units/index.js';
import { drawEar, type EarOutline } from '../shared/ear-outline.js';
import { sizeHole, type SizedHole } from '../shared/holes.js';
import { legOf } from '../shared/weld-edge-fields.js';
import type { Tab } from './parameters.js';

export interface ResolvedTab {
  readonly size: SizedHole;
  readonly nose: number;
  readonly outline: EarOutline;
}

type Answer =
  | { readonly ok: true; readonly value: ResolvedTab }
  | { readonly ok: false; readonly field: string; readonly says: string };

/** Edge distance when none is given, in bolt diameters, and metal beside the hole, in thicknesses. */
const USUAL_EDGE = 2;
const USUAL_WEB = 1.5;

export function resolveTab(p: Tab): Answer {
  const size = sizeHole(p);
  if (typeof size === 'string') return { ok: false, field: 'bolt', says: size };
  const nose =
    p.nose?.mm ?? Math.max(USUAL_EDGE * size.thread.diameter, size.diameter / 2 + USUAL_WEB * p.thickness.mm);
  if (nose <= size.diameter / 2) {
    return {
      ok: false,
      field: 'nose',
      says: `A nose of radius ${nose.toFixed(2)} mm leaves no metal round a hole of ⌀${size.diameter.toFixed(2)} mm; a larger nose or a smaller hole would do.`,
    };
  }
  const ear = drawEar({
    base: p.base.mm,
    height: p.height.mm,
    nose,
    lean: p.lean.mm,
    tube: p.edge === 'coped' ? p.tube.mm : undefined,
  });
  if (!ear.ok) return ear;
  return { ok: true, value: { size, nose, outline: ear.value } };
}

/** The thinner of plate and tube wall, mm. */
export const thinnerOf = (p: {
  readonly thickness: { readonly mm: number };
  readonly wall: { readonly mm: number };
}): number => Math.min(p.thickness.mm, p.wall.mm);

export const filletOf = (p: Tab, unit: Unit): number => legOf(p.weldLeg, thinnerOf(p), unit);

/** Inside of one ear to inside of the other, mm; none for a single ear. */
export const gapOf = (p: Tab): number | undefined => (p.ears === 'pair' ? p.eye.mm + p.play.mm : undefined);
