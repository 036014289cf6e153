// A foot laid flat: how far it lies below the ear, where it bends, where its bolts stand.
import { bendAllowance, outsideSetback } from '../../handbook/index.js';
import type { Feature } from '../../model/index.js';
import type { Entry, NumberEntry } from '../fields/index.js';
import type { PlacedHole } from './bolted.js';
import { refusal, type Resolved } from './resolved.js';
import { roundText } from './words.js';

/** What a foot is made of, of any family. */
export interface FootParameters {
  readonly foot: 'weld' | 'flat' | 'bent';
  readonly bolts: number;
  readonly spacing: Entry;
  readonly inset: Entry;
  readonly footDepth: Entry;
  readonly radius: Entry;
  readonly kFactor: NumberEntry;
  readonly thickness: Entry;
}

/** A square bend; y in mm, the ear's straight side begins at 0. */
export interface BentFoot {
  readonly allowance: number;
  readonly setback: number;
  /** Middle of the bend, and where it begins on the foot's side. */
  readonly bendAt: number;
  readonly bendFrom: number;
}

export interface LaidFoot {
  /** Plate below the ear's base line, mm; 0 for a weld edge. */
  readonly depth: number;
  readonly bend: BentFoot | undefined;
  /** From the ear's base line to the hole whose height over what it stands on is `height`, mm. */
  readonly above: number;
  readonly holes: readonly PlacedHole[];
}

/**
 * Lays the foot flat. Heights count from the weld edge, the lower edge of a flat foot, or the underside of a bent one.
 *
 * @example bent 60 deep in 6 mm, R 9, K 0.4: 45 straight and 17.907 of bend below the ear
 */
export function layFoot(p: FootParameters, height: number): Resolved<LaidFoot> {
  if (p.foot === 'weld') return { ok: true, value: { depth: 0, bend: undefined, above: height, holes: [] } };
  const thickness = p.thickness.mm;
  const bend: BentFoot | undefined =
    p.foot === 'flat'
      ? undefined
      : (() => {
          const allowance = bendAllowance(90, p.radius.mm, thickness, p.kFactor.value);
          const setback = outsideSetback(90, p.radius.mm, thickness);
          return { allowance, setback, bendAt: -allowance / 2, bendFrom: -allowance };
        })();
  if (bend !== undefined && p.footDepth.mm <= bend.setback)
    return refusal(
      'footDepth',
      `The bend takes up ${roundText(bend.setback)} mm of a foot of ${roundText(p.footDepth.mm)} mm; a longer one or a smaller radius would do.`,
    );
  const depth = bend === undefined ? p.footDepth.mm : bend.allowance + p.footDepth.mm - bend.setback;
  const above = height - (bend === undefined ? depth : bend.setback);
  if (above <= 0)
    return refusal(
      'height',
      `The foot takes up ${roundText(height - above)} mm of a height of ${roundText(height)} mm; more height or a lower foot would do.`,
    );
  const holes = Array.from({ length: p.bolts }, (_, index) => ({
    featureId: `foot.${index + 1}`,
    at: { x: (index - (p.bolts - 1) / 2) * p.spacing.mm, y: -depth + p.inset.mm },
  }));
  return { ok: true, value: { depth, bend, above, holes } };
}

/** The bend as a line across the plate, marked and never cut. */
export const bendLine = (bend: BentFoot | undefined, width: number, radius: number): readonly Feature[] =>
  bend === undefined
    ? []
    : [
        {
          id: 'bend',
          name: 'bend line',
          purpose: 'score',
          path: {
            vertices: [
              { x: -width / 2, y: bend.bendAt, bulge: 0 },
              { x: width / 2, y: bend.bendAt, bulge: 0 },
            ],
          },
          bend: { degrees: 90, radius, direction: 'up' },
        },
      ];
