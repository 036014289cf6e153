// The teeth of a sprocket resolved: chain, form, gap, outside diameter, outline.
import { circleContour, turnedContour, type Contour } from '../../geometry/index.js';
import { findChain, sprocketDiameters, type Chain, type SprocketDiameters } from '../../handbook/index.js';
import type { Feature } from '../../model/index.js';
import { lastKnown } from '../shared/last-known.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import {
  ansiGap,
  bottomsOf,
  isoGap,
  landAt,
  leastOutside,
  outsideForLand,
  toothSector,
  type ToothForm,
  type ToothGap,
} from '../shared/sprocket/tooth-gap.js';
import type { SprocketPlate } from './parameters.js';

/** What stays of a tip at least, mm: less is a point that no torch leaves standing. */
const LEAST_LAND = 0.2;

export interface Teeth {
  readonly chain: Chain;
  readonly count: number;
  readonly gap: ToothGap;
  readonly diameters: SprocketDiameters;
  readonly outside: number;
  /** Breadth of the tips, mm. */
  readonly land: number;
  /** Bottom diameter and caliper reading as drawn, mm. */
  readonly root: number;
  readonly caliper: number;
  readonly outline: Contour;
}

/** Gap and outline outlive edits of bolts, middle and windows. */
const gapOf = lastKnown((chain: Chain, form: ToothForm, teeth: number): ToothGap | undefined =>
  form === 'ansi' ? ansiGap(chain, teeth) : isoGap(chain, teeth),
);
const outlineOf = lastKnown((gap: ToothGap, outside: number): Contour =>
  turnedContour(toothSector(gap, outside), gap.teeth),
);

/** Chain and teeth to an outline, or the field that stands in the way. */
export function resolveTeeth(p: SprocketPlate): Resolved<Teeth> {
  const found = findChain(p.chain);
  if (!found.found) return refusal('chain', found.says);
  const chain = found.row;
  const form = p.form ?? (chain.standard === 'ANSI B29.1' ? 'ansi' : 'iso');
  const diameters = sprocketDiameters(chain, p.teeth);
  const gap = gapOf(chain, form, p.teeth);
  if (diameters === undefined || gap === undefined) {
    return refusal(
      'teeth',
      `${p.teeth} teeth for ${chain.name} chain have no tooth form; more teeth would do.`,
    );
  }
  const pointed = outsideForLand(gap, LEAST_LAND);
  const least = leastOutside(gap);
  const usual = Math.min(form === 'ansi' ? diameters.outside : diameters.isoOutside.min, pointed);
  const outside = p.outside?.mm ?? usual;
  if (outside > pointed) {
    return refusal(
      'outside',
      `The teeth come to a point before ⌀${outside.toFixed(2)} mm; accepted is up to ⌀${pointed.toFixed(2)} mm, usual ⌀${usual.toFixed(2)} mm.`,
    );
  }
  if (outside <= least + 0.01) {
    return refusal(
      'outside',
      `⌀${outside.toFixed(2)} mm leaves no tooth over the pitch circle of ⌀${diameters.pitchDiameter.toFixed(2)} mm; usual is ⌀${usual.toFixed(2)} mm.`,
    );
  }
  return {
    ok: true,
    value: {
      chain,
      count: p.teeth,
      gap,
      diameters,
      outside,
      land: landAt(gap, outside),
      ...bottomsOf(gap),
      outline: outlineOf(gap, outside),
    },
  };
}

/**
 * The features of a sprocket without its teeth: a disc as large as the bottoms of the gaps. Webs, edges and lettering are
 * judged on it, since no gap reaches farther in.
 */
export const withoutTeeth = (features: readonly Feature[], { root }: Teeth): readonly Feature[] =>
  features.map((feature) =>
    feature.purpose === 'outline'
      ? { ...feature, contour: circleContour({ x: 0, y: 0 }, root / 2, 'outline') }
      : feature,
  );
