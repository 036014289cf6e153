// The pivot’s hole: what a cut hole holds, what is bored, how the tube is welded in.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import { fitLimits, leastFilletLeg, perpendicularity, type Source } from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { PivotBracket } from './parameters.js';
import { gapOf, type ResolvedBracket } from './resolve.js';

/** Gap on a side beyond which a fillet must be made larger by it, mm. */
const LARGEST_GAP = 1.6;
const GAP: Source = {
  title: 'AWS D1.1 fillet root opening',
  where: '1/16 in (1.6 mm); beyond it the leg grows by the gap',
  certainty: 'from memory',
};
const PRACTICE: Source = {
  title: 'Pivots in cut plate',
  where: 'a plasma-cut hole is hard, tapered and out of round; what turns gets a bush or a tube',
  certainty: 'common practice',
};
const LEAN_RANGE = 3;

function checkTube(p: PivotBracket, r: ResolvedBracket, facts: Facts): readonly Finding[] {
  const { length } = facts.format;
  const range = facts.kerf.plusMinus;
  const place = { subject: { featureId: 'pivot' }, anchor: r.ear.centre } as const;
  const loose = (p.fit.mm + range) / 2;
  const leg = leastFilletLeg(Math.min(p.thickness.mm, p.tubeWall.mm), facts.format.unit);
  const gap = gapOf(p);
  return [
    found({
      ...place,
      code: 'pivot-fit',
      level: judge(['caution', loose > LARGEST_GAP], ['note', p.fit.mm < range]),
      field: 'fit',
      title: `Tube ⌀${length(p.outside.mm)} in ⌀${length(r.cut)}: ${length(p.fit.mm)} ±${length(range)} on diameter`,
      says:
        p.fit.mm < range
          ? 'With kerf off by its ± it may want grinding before the tube goes in; cut one and try it.'
          : 'It slips in and is squared on a bar through both ears before tacking.',
      value: quantity(p.fit.mm, 'mm', range),
      limit: quantity(2 * LARGEST_GAP, 'mm'),
      source: GAP,
    }),
    found({
      ...place,
      code: 'tube-overhang',
      level: judge(['note', p.overhang.mm < leg.leg]),
      field: 'overhang',
      title: `Tube ${length(p.overhang.mm)} beyond the ears, ${length(leg.leg)} for its fillet`,
      says:
        p.overhang.mm < leg.leg
          ? 'There is no corner for a fillet outside: weld it inside the pair, or let the tube stand out further.'
          : `Fillet of ${length(leg.leg)} outside each ear; the pull of the weld closes the tube, ream it after.`,
      value: quantity(p.overhang.mm, 'mm'),
      limit: quantity(leg.leg, 'mm'),
      source: leg.source,
    }),
    ...(gap === undefined
      ? []
      : [
          found({
            ...place,
            code: 'tube-length',
            level: 'pass' as const,
            field: 'gap',
            title: `Pivot tube ${length(gap + 2 * (p.thickness.mm + p.overhang.mm))} long`,
            says: 'Through both ears in one piece; what turns between them goes on before the second ear.',
            formula: `${digits(gap)} + 2 × (${digits(p.thickness.mm)} + ${digits(p.overhang.mm)})`,
            source: PRACTICE,
          }),
        ]),
  ];
}

function checkBush(p: PivotBracket, r: ResolvedBracket, facts: Facts): readonly Finding[] {
  const { length, fine } = facts.format;
  const needed = facts.cutTolerance(r.cut).amount + 2 * perpendicularity(p.thickness.mm, LEAN_RANGE).value;
  const limits = fitLimits('H7', r.finished);
  const size = limits.found
    ? `H7: ${fine(r.finished + limits.row.lower)} to ${fine(r.finished + limits.row.upper)}`
    : 'H7, limits not held for this size';
  return [
    found({
      subject: { featureId: 'pivot' },
      anchor: r.ear.centre,
      code: 'pivot-fit',
      level: judge(['caution', p.boreAllowance.mm < needed]),
      field: 'boreAllowance',
      title: `Cut ⌀${length(r.cut)}, bored to ⌀${length(r.finished)} ${size}`,
      says: `${length(p.boreAllowance.mm)} is left to bore, ${length(needed)} is what the cut may be off and lean. Bore both ears of a pair in one setting, or on one bar.`,
      value: quantity(p.boreAllowance.mm, 'mm'),
      limit: quantity(needed, 'mm'),
      formula: `${digits(facts.cutTolerance(r.cut).amount)} + 2 × ${digits(perpendicularity(p.thickness.mm, LEAN_RANGE).value)} = ${digits(needed)}`,
      source: facts.cutTolerance(r.cut).source,
    }),
  ];
}

export function checkPivotHole(p: PivotBracket, r: ResolvedBracket, facts: Facts): readonly Finding[] {
  if (p.pivot === 'tube') return checkTube(p, r, facts);
  if (p.pivot === 'bush') return checkBush(p, r, facts);
  return [
    found({
      subject: { featureId: 'pivot' },
      anchor: r.ear.centre,
      code: 'pivot-fit',
      level: 'note',
      field: 'pivot',
      title: `${r.pin.name} in cut holes of ⌀${facts.format.length(r.cut)}`,
      says: 'Fine where the bolt is clamped and the boss turns on a bush between the ears; a bolt that turns in the cut holes wears them oval.',
      source: PRACTICE,
      remedies: [{ says: 'Weld a pivot tube in', change: [{ op: 'add', path: '/pivot', value: 'tube' }] }],
    }),
  ];
}
