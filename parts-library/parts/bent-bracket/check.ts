// Checks of a bent bracket: holes and flanges beside the bends, radius, score, webs, small holes.
import {
  checkSmallHoles,
  checkWebs,
  digits,
  found,
  judge,
  quantity,
  type Facts,
} from '../../checks/index.js';
import { holeToBend, leastBendRadius, minFlange, type Source } from '../../handbook/index.js';
import type { Finding, Part } from '../../model/index.js';
import { foldedProfile } from './folded.js';
import { holeDiameterOf, holesOf } from './holes.js';
import { flatPatternOf, type FlatPattern } from './profile.js';
import type { BentBracket } from './parameters.js';

/** Deepest groove that still counts as a bend, and deepest that is welded after, as shares of the thickness. */
const GROOVE_UNWELDED = 1 / 3;
const GROOVE_WELDED = 1 / 2;

const SCORING: Source = {
  title: 'Score-line bends',
  where:
    'published groove depths T/3, and T/2 where the bend is welded after; plasma scoring is not repeatable',
  certainty: 'published',
};

function checkHolesFromBend(p: BentBracket, flat: FlatPattern, facts: Facts): readonly Finding[] {
  const rule = holeToBend(p.thickness.mm, flat.radius);
  const radius = holeDiameterOf(p) / 2;
  return holesOf(p, flat).map(({ id, at, field }) => {
    const gap = Math.min(...flat.bends.map((bend) => Math.abs(at.x - bend.at) - flat.allowance / 2 - radius));
    const isNear = gap < rule.value;
    return found({
      code: 'hole-to-bend',
      level: judge(['stop', gap < 0], ['caution', isNear]),
      subject: { featureId: id },
      anchor: at,
      field,
      title: `Hole edge to bend ${facts.format.length(gap)}, ${facts.format.length(rule.value)} wanted`,
      says: isNear
        ? 'A hole too near the bend is pulled out of round; move it out, or drill it after bending.'
        : 'Clear of the bent zone.',
      value: quantity(gap, 'mm'),
      limit: quantity(rule.value, 'mm'),
      formula: `2.5 × ${digits(p.thickness.mm)} + ${digits(flat.radius)} = ${digits(rule.value)}`,
      source: rule.source,
    });
  });
}

function checkRadius(p: BentBracket, flat: FlatPattern, facts: Facts): readonly Finding[] {
  const rule = leastBendRadius(p.material, p.thickness.mm);
  if (rule === undefined || p.made === 'scored') return [];
  return [
    found({
      code: 'bend-radius',
      level: judge(['caution', p.radius.mm < rule.value]),
      subject: { featureId: 'bend.1' },
      anchor: { x: flat.bends[0]?.at ?? 0, y: 0 },
      field: 'radius',
      title: `Inside radius ${facts.format.length(p.radius.mm)}, at least ${facts.format.length(rule.value)} across the grain`,
      says: `A tighter bend cracks on the outside; along the grain allow ${facts.format.length(rule.along)}.`,
      value: quantity(p.radius.mm, 'mm'),
      limit: quantity(rule.value, 'mm'),
      formula: `${digits(rule.value / p.thickness.mm)} × ${digits(p.thickness.mm)} = ${digits(rule.value)}`,
      source: rule.source,
    }),
  ];
}

/** A leg shorter than the V opening bears on cannot be pressed; a scored one is folded by hand. */
function checkFlanges(p: BentBracket, flat: FlatPattern, facts: Facts): readonly Finding[] {
  if (p.made === 'scored') return [];
  const rule = minFlange(p.thickness.mm);
  const shortest = flat.legs.reduce((a, b) => (b.outside < a.outside ? b : a));
  return [
    found({
      code: 'least-flange',
      level: judge(['caution', shortest.outside < rule.value]),
      anchor: { x: (shortest.from + shortest.to) / 2, y: 0 },
      field: shortest.field,
      title: `Shortest leg ${facts.format.length(shortest.outside)} (${shortest.name}), ${facts.format.length(rule.value)} for a press brake`,
      says:
        shortest.outside < rule.value
          ? 'It slips into the usual V opening of eight thicknesses. A narrower V with a smaller radius, a vice, or trimming after bending would do.'
          : 'It bears on both edges of the usual V opening of eight thicknesses.',
      value: quantity(shortest.outside, 'mm'),
      limit: quantity(rule.value, 'mm'),
      formula: `0.7 × 8 × ${digits(p.thickness.mm)} = ${digits(rule.value)}`,
      source: rule.source,
    }),
  ];
}

/** Moment to fold and strength left go with the square of what the groove leaves: (tr/T)². */
function checkScore(p: BentBracket, flat: FlatPattern, facts: Facts): readonly Finding[] {
  if (p.made !== 'scored') return [];
  const isWelded = p.weldedAfter === 'yes';
  const most = (isWelded ? GROOVE_WELDED : GROOVE_UNWELDED) * p.thickness.mm;
  const left = ((p.thickness.mm - p.groove.mm) / p.thickness.mm) ** 2;
  return [
    found({
      code: 'scored-bend',
      level: judge(
        ['stop', p.loaded === 'yes' && !isWelded],
        ['caution', p.groove.mm > most],
        ['caution', true],
      ),
      subject: { featureId: 'bend.1' },
      anchor: { x: flat.bends[0]?.at ?? 0, y: 0 },
      field: p.loaded === 'yes' && !isWelded ? 'weldedAfter' : 'groove',
      title:
        p.loaded === 'yes' && !isWelded
          ? 'A scored bend that carries load must be welded after'
          : `Groove ${facts.format.length(p.groove.mm)}, at most ${facts.format.length(most)} here`,
      says: `Unwelded it keeps ${Math.round(left * 100)} % of the plate's bending strength. Plasma scoring is not repeatable: try it on a strip of the same plate. Slots along the line, folded and welded, are the surer way.`,
      value: quantity(p.groove.mm, 'mm'),
      limit: quantity(most, 'mm'),
      formula: `((${digits(p.thickness.mm)} − ${digits(p.groove.mm)}) ÷ ${digits(p.thickness.mm)})² = ${digits(left, 3)}`,
      source: SCORING,
    }),
  ];
}

/** Legs that run into each other when folded. */
function checkFolds(p: BentBracket, flat: FlatPattern): readonly Finding[] {
  if (foldedProfile(flat, p.bend.value, p.thickness.mm, { x: 0, y: 0 }) !== undefined) return [];
  return [
    found({
      code: 'folds-into-itself',
      level: 'stop',
      field: 'bend',
      title: 'Folded, the legs run into each other',
      says: 'A longer middle, shorter legs, or a smaller bend would do.',
      source: { title: 'Plane geometry', where: 'the folded profile', certainty: 'common practice' },
    }),
  ];
}

export function checkBentBracket(part: Part, p: BentBracket, facts: Facts): readonly Finding[] {
  const flat = flatPatternOf(p);
  return [
    ...checkFolds(p, flat),
    ...checkHolesFromBend(p, flat, facts),
    ...checkRadius(p, flat, facts),
    ...checkFlanges(p, flat, facts),
    ...checkScore(p, flat, facts),
    ...checkWebs(part, facts),
    ...checkSmallHoles(part, facts, () => ({ field: 'bolt' })),
  ];
}
