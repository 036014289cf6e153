// Checks of a bent bracket: holes clear of the bend, bend not too tight, webs, small holes.
import {
  checkSmallHoles,
  checkWebs,
  digits,
  found,
  judge,
  quantity,
  type Facts,
} from '../../checks/index.js';
import { holeToBend, leastBendRadius } from '../../handbook/index.js';
import type { Finding, Part } from '../../model/index.js';
import { flatPatternOf } from './draw.js';
import type { BentBracket } from './parameters.js';

function checkHolesFromBend(p: BentBracket, facts: Facts): readonly Finding[] {
  const flat = flatPatternOf(p);
  const rule = holeToBend(p.thickness.mm, p.radius.mm);
  const begins = flat.bendAt - flat.allowance / 2;
  const ends = flat.bendAt + flat.allowance / 2;
  return [
    { id: 'legA.hole', field: 'holeA', at: p.holeA.mm, gap: begins - p.holeA.mm - flat.hole / 2 },
    {
      id: 'legB.hole',
      field: 'holeB',
      at: flat.length - p.holeB.mm,
      gap: flat.length - p.holeB.mm - flat.hole / 2 - ends,
    },
  ].map(({ id, field, at, gap }) =>
    found({
      code: 'hole-to-bend',
      level: judge(['stop', gap < 0], ['caution', gap < rule.value]),
      subject: { featureId: id },
      anchor: { x: at, y: 0 },
      field,
      title: `Hole edge to bend ${facts.format.length(gap)}, ${facts.format.length(rule.value)} wanted`,
      says:
        gap < rule.value
          ? 'A hole too near the bend is pulled out of round; move it out, or drill it after bending.'
          : 'Clear of the bent zone.',
      value: quantity(gap, 'mm'),
      limit: quantity(rule.value, 'mm'),
      formula: `2.5 × ${digits(p.thickness.mm)} + ${digits(p.radius.mm)} = ${digits(rule.value)}`,
      source: rule.source,
    }),
  );
}

function checkRadius(p: BentBracket, facts: Facts): readonly Finding[] {
  const rule = leastBendRadius(p.material, p.thickness.mm);
  if (rule === undefined) return [];
  const least = rule.value;
  return [
    found({
      code: 'bend-radius',
      level: judge(['caution', p.radius.mm < least]),
      subject: { featureId: 'bend' },
      anchor: { x: flatPatternOf(p).bendAt, y: 0 },
      field: 'radius',
      title: `Inside radius ${facts.format.length(p.radius.mm)}, at least ${facts.format.length(least)} across the grain`,
      says: `A tighter bend cracks on the outside; along the grain allow ${facts.format.length(rule.along)}.`,
      value: quantity(p.radius.mm, 'mm'),
      limit: quantity(least, 'mm'),
      formula: `${digits(least / p.thickness.mm)} × ${digits(p.thickness.mm)} = ${digits(least)}`,
      source: rule.source,
    }),
  ];
}

export function checkBentBracket(part: Part, p: BentBracket, facts: Facts): readonly Finding[] {
  return [
    ...checkHolesFromBend(p, facts),
    ...checkRadius(p, facts),
    ...checkWebs(part, facts),
    ...checkSmallHoles(part, facts, () => ({ field: 'bolt' })),
  ];
}
