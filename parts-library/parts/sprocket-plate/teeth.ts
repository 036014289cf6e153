// The teeth of a sprocket resolved: chain, form, gap, outside diameter, outline.
import { circleContour, turnedContour, type Contour } from '../../geometry/index.js';
import { findChain, sprocketDiameters, type Chain, type SprocketDiameters } from '../../handbook/index.js';
import type { Feature } from '../../model/index.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import {
  ansiGap,
  bottomsOf,
  isoGap,
  landAt,
  leastOutside,
  outsideForLand,
  toothSector,
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

/** Chain and teeth to an outline, or the field that stands in the way. */
export function resolveTeeth(p: SprocketPlate): Resolved<Teeth> {
  const found = findChain(p.chain);
  if (!found.found) return refusal('chain', found.says);
  const chain = found.row;
  const diameters = sprocketDiameters(chain, p.teeth);
  const form = p.form ?? (chain.standard === 'ANSI B29.1' ? 'ansi' : 'iso');
  const gap = form === 'ansi' ? ansiGap(chain, p.teeth) : isoGap(chain, p.teeth);
  if (diameters === undefined || gap === undefined) {
    return refusal(
      'form',
      `The ANSI construction does not close for ${chain.name} on ${p.teeth} teeth; the ISO 606 form would do.`,
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
      outline: turnedContour(toothSector(gap, outside), p.teeth),
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
