// The tabs: enough of them, hole clear of end and bend, a bend that can be made.
import {
  checkEdgeDistance,
  checkTapping,
  checkThreadEngagement,
  digits,
  found,
  judge,
  quantity,
  type Facts,
} from '../../checks/index.js';
import { holeToBend, leastBendRadius, minFlange, type Material, type Source } from '../../handbook/index.js';
import type { Finding, Part } from '../../model/index.js';
import { patternOf, underFields } from '../shared/bolted.js';
import type { ChainGuard } from './parameters.js';
import type { ResolvedGuard } from './resolve.js';
import { tabFlat } from './tabs.js';

const HELD: Source = {
  title: 'Fixed guards',
  where: 'held by fasteners that need a tool, three at least so that the plate does not rattle or turn',
  certainty: 'common practice',
};
const LEAST_TABS = 3;

function checkHeld(p: ChainGuard, { tabs }: ResolvedGuard): Finding {
  const count = tabs.length;
  const level = judge(['stop', count === 0], ['caution', count < LEAST_TABS]);
  return found({
    code: 'guard-held',
    level,
    ...(tabs[0] === undefined ? {} : { subject: { featureId: tabs[0].id }, anchor: tabs[0].hole }),
    field: p.tabsAbove < p.tabsBelow ? 'tabsAbove' : 'tabsBelow',
    title:
      level === 'pass'
        ? `Held by ${count} bolts`
        : count === 0
          ? 'Nothing holds the guard'
          : `Held by ${count} ${count === 1 ? 'bolt' : 'bolts'} only, ${LEAST_TABS} wanted`,
    says: 'A guard that rattles loose falls into the chain. It comes off with a tool, never by hand.',
    value: quantity(count, '1'),
    limit: quantity(LEAST_TABS, '1'),
    source: HELD,
  });
}

function checkBend(p: ChainGuard, r: ResolvedGuard, facts: Facts): readonly Finding[] {
  const { bend } = tabFlat(p);
  const [tab] = r.tabs;
  if (bend === undefined || tab === undefined) return [];
  const { length } = facts.format;
  const place = { subject: { featureId: `${tab.id}.bend` }, anchor: tab.hole } as const;
  const gap = tab.length - p.tabHole.mm - bend.ends - r.size.diameter / 2;
  const clear = holeToBend(p.thickness.mm, p.bendRadius.mm);
  const radius = leastBendRadius(p.material, p.thickness.mm);
  const flange = minFlange(p.thickness.mm);
  return [
    found({
      ...place,
      code: 'hole-to-bend',
      level: judge(['stop', gap < 0], ['caution', gap < clear.value]),
      field: 'tabLength',
      title: `Hole edge to bend ${length(gap)}, ${length(clear.value)} wanted`,
      says:
        gap < clear.value
          ? 'A hole too near the bend is pulled out of round; a longer tab, or drilling after bending would do.'
          : 'Clear of the bent zone.',
      value: quantity(gap, 'mm'),
      limit: quantity(clear.value, 'mm'),
      formula: `2.5 × ${digits(p.thickness.mm)} + ${digits(p.bendRadius.mm)} = ${digits(clear.value)}`,
      source: clear.source,
    }),
    ...(radius === undefined
      ? []
      : [
          found({
            ...place,
            code: 'bend-radius',
            level: judge(['caution', p.bendRadius.mm < radius.value - 1e-9]),
            field: 'bendRadius',
            title: `Inside radius ${length(p.bendRadius.mm)}, at least ${length(radius.value)} across the grain`,
            says: `A tighter bend cracks on the outside; along the grain allow ${length(radius.along)}.`,
            value: quantity(p.bendRadius.mm, 'mm'),
            limit: quantity(radius.value, 'mm'),
            source: radius.source,
          }),
        ]),
    found({
      ...place,
      code: 'least-flange',
      level: judge(['caution', p.tabLength.mm < flange.value]),
      field: 'tabLength',
      title: `Leg ${length(p.tabLength.mm)}, ${length(flange.value)} for a press brake`,
      says: 'In a vice between two bars a shorter one bends as well.',
      value: quantity(p.tabLength.mm, 'mm'),
      limit: quantity(flange.value, 'mm'),
      formula: `0.7 × 8 × ${digits(p.thickness.mm)} = ${digits(flange.value)}`,
      source: flange.source,
    }),
  ];
}

export function checkTabs(
  part: Part,
  p: ChainGuard,
  r: ResolvedGuard,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  const holes = r.tabs.map(({ id, hole }) => ({ featureId: `${id}.hole`, at: hole }));
  const pattern = patternOf(r.size, holes);
  return [
    checkHeld(p, r),
    ...(holes.length === 0
      ? []
      : underFields(
          [
            ...checkEdgeDistance(part, pattern, facts),
            ...checkTapping(pattern, p.thickness.mm, facts),
            ...checkThreadEngagement(pattern, { material, thickness: p.thickness.mm }, '8.8', facts),
          ],
          { edge: 'tabHole' },
        )),
    ...checkBend(p, r, facts),
  ];
}
