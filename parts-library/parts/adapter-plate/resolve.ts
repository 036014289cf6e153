// An adapter plate resolved once: patterns, centre, outside and lightening, for drawing, checks and print alike.
import type { AdapterPlate } from './parameters.js';
import { drawCentre, resolveCentre, type Centre } from '../shared/centre.js';
import { drawOutside, type Outside } from './outside.js';
import { resolvePatterns, type ResolvedPattern } from '../shared/pattern.js';
import type { CutFeature } from '../../model/index.js';
import { GeometryError, type Point } from '../../geometry/index.js';
import { boltHoles } from '../../handbook/index.js';

export interface Resolved {
  readonly patterns: readonly ResolvedPattern[];
  readonly centre: Centre | undefined;
  readonly centreFeature: CutFeature | undefined;
  readonly outside: Outside;
  readonly lightening: readonly Point[];
  readonly lighteningCircle: number;
}

export type ResolveResult =
  | { readonly ok: true; readonly value: Resolved }
  | { readonly ok: false; readonly field: string; readonly says: string };

function resolveFresh(p: AdapterPlate): ResolveResult {
  const patterns = resolvePatterns(p);
  if (!patterns.ok) return patterns;
  const centre = resolveCentre(p);
  if (!centre.ok) return centre;
  const centreFeature = centre.value === undefined ? undefined : drawCentre(p, centre.value);
  if (centreFeature?.ok === false) return centreFeature;
  try {
    const outside = drawOutside(p, patterns.value, centre.value);
    if (!outside.ok) return outside;
    const inner = (centre.value?.drawn ?? 0) / 2;
    const bolts = Math.min(...patterns.value.map(({ circle }) => circle.diameter / 2));
    const lighteningCircle = p.lighteningCircle?.mm ?? inner + bolts;
    // Between the bolts; on a lobed plate the metal is at the bolts.
    const first = p.lighteningClocking?.value ?? p.clocking.value + (p.shape === 'lobed' ? 0 : 180 / p.bolts);
    return {
      ok: true,
      value: {
        patterns: patterns.value,
        centre: centre.value,
        centreFeature: centreFeature?.value,
        outside: outside.value,
        lightening: p.lightening === 0 ? [] : boltHoles(lighteningCircle, p.lightening, first),
        lighteningCircle,
      },
    };
  } catch (error) {
    // Only the outside is built from free-form arcs; anything but a geometry fault is a defect and goes on up.
    if (error instanceof GeometryError) return { ok: false, field: 'edge', says: error.message };
    throw error;
  }
}

const resolved = new WeakMap<AdapterPlate, ResolveResult>();

/** Resolves parameters; the same parameters object is resolved once, since five stages ask for it. */
export function resolve(p: AdapterPlate): ResolveResult {
  const known = resolved.get(p);
  if (known !== undefined) return known;
  const fresh = resolveFresh(p);
  resolved.set(p, fresh);
  return fresh;
}
