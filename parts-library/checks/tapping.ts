// Tapped holes are punched and drilled, never tapped in a plasma-cut edge.
import type { Source } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import { pilotDiameter } from '../process/index.js';
import type { BoltPattern } from './bolt-holes.js';
import type { Facts } from './facts.js';
import { found, quantity } from './findings.js';

const HARD_EDGE: Source = {
  title: 'Hardened plasma edge',
  where:
    'reports of broken drills and taps in plasma-cut holes; pilot = drill − 3 mm so that the lips run outside the hard skin',
  certainty: 'published',
};

/** Says how the marks of a pattern become holes. */
export function checkTapping(pattern: BoltPattern, facts: Facts): readonly Finding[] {
  const first = pattern.holes[0];
  if (first === undefined || (pattern.made !== 'tapped' && pattern.made !== 'drill')) return [];
  const pilot = pilotDiameter(pattern.holeDiameter);
  return [
    found({
      code: 'drilled-from-mark',
      level: 'note',
      subject: { featureId: first.featureId },
      anchor: first.at,
      field: `${pattern.fieldPrefix}holes`,
      title: `${pattern.count} centre marks to drill ⌀${facts.format.length(pattern.holeDiameter)}${pattern.made === 'tapped' ? ` and tap ${pattern.thread.name}` : ''}`,
      says: `The torch only marks; a plasma-cut edge is hard and ruins taps and drills. A pilot, if one is cut, stays at ${pilot === undefined ? 'none for this size' : `⌀${facts.format.length(pilot)} or less`}. Each mark is a start for the consumables.`,
      value: quantity(pattern.holeDiameter, 'mm'),
      ...(pilot === undefined ? {} : { limit: quantity(pilot, 'mm') }),
      source: HARD_EDGE,
    }),
  ];
}
