// Rules of a bent foot: radius, holes and flange beside the bend.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import { holeToBend, leastBendRadius, minFlange } from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { PlacedHole } from './bolted.js';
import type { BentFoot, FootParameters } from './foot.js';

/** A foot and the plate that it is bent from. */
export interface BentParameters extends FootParameters {
  readonly material: string;
}

/** Radius, hole and flange beside the bend; `hole` is the foot holes’ diameter, mm. Nothing for a foot that is not bent. */
export function checkBend(
  p: BentParameters,
  laid: { readonly bend: BentFoot | undefined; readonly holes: readonly PlacedHole[] },
  hole: number,
  facts: Facts,
): readonly Finding[] {
  const first = laid.holes[0];
  if (laid.bend === undefined || first === undefined) return [];
  const { length } = facts.format;
  const t = p.thickness.mm;
  const toBend = holeToBend(t, p.radius.mm);
  const gap = laid.bend.bendFrom - first.at.y - hole / 2;
  const flange = minFlange(t);
  const least = leastBendRadius(p.material, t);
  const anchor = { x: 0, y: laid.bend.bendAt };
  return [
    found({
      code: 'hole-to-bend',
      level: judge(['stop', gap < 0], ['caution', gap < toBend.value]),
      subject: { featureId: first.featureId },
      anchor: first.at,
      field: 'footDepth',
      title: `Hole edge to bend ${length(gap)}, ${length(toBend.value)} wanted`,
      says:
        gap < toBend.value
          ? 'The bend pulls the holes out of round and their washers ride on its radius. A longer foot, or drilling after bending would do.'
          : 'Clear of the bent zone.',
      value: quantity(gap, 'mm'),
      limit: quantity(toBend.value, 'mm'),
      formula: `2.5 × ${digits(t)} + ${digits(p.radius.mm)} = ${digits(toBend.value)}`,
      source: toBend.source,
    }),
    found({
      code: 'least-flange',
      level: judge(['caution', p.footDepth.mm < flange.value]),
      subject: { featureId: 'bend' },
      anchor,
      field: 'footDepth',
      title: `Foot ${length(p.footDepth.mm)} long, ${length(flange.value)} for a press brake`,
      says: 'A shorter one slips into the usual V opening of eight thicknesses.',
      value: quantity(p.footDepth.mm, 'mm'),
      limit: quantity(flange.value, 'mm'),
      formula: `0.7 × 8 × ${digits(t)} = ${digits(flange.value)}`,
      source: flange.source,
    }),
    ...(least === undefined
      ? []
      : [
          found({
            code: 'bend-radius',
            level: judge(['caution', p.radius.mm < least.value - 1e-9]),
            subject: { featureId: 'bend' },
            anchor,
            field: 'radius',
            title: `Inside radius ${length(p.radius.mm)}, at least ${length(least.value)} across the grain`,
            says: `A tighter bend cracks on the outside; along the grain allow ${length(least.along)}.`,
            value: quantity(p.radius.mm, 'mm'),
            limit: quantity(least.value, 'mm'),
            source: least.source,
          }),
        ]),
  ];
}
