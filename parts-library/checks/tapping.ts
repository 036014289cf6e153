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
export function checkTapping(pattern: BoltPattern, thickness: number, facts: Facts): readonly Finding[] {
  const first = pattern.holes[0];
  if (first === undefined || (pattern.made !== 'tapped' && pattern.made !== 'drill')) return [];
  const smallest = Math.max(thickness, 4 * facts.kerf.amount);
  const allowed = pilotDiameter(pattern.holeDiameter);
  // A pilot that the torch cannot cut is no pilot.
  const pilot = allowed !== undefined && allowed >= smallest ? allowed : undefined;
  return [
    found({
      code: 'drilled-from-mark',
      level: 'note',
      subject: { featureId: first.featureId },
      anchor: first.at,
      field: `${pattern.fieldPrefix}holes`,
      title: `${pattern.count} centre marks to drill ⌀${facts.format.length(pattern.holeDiameter)}${pattern.made === 'tapped' ? ` and tap ${pattern.thread.name}` : ''}`,
      says: `The torch only marks; a plasma-cut edge is hard and ruins taps and drills. ${pilot === undefined ? 'Drill from solid: no pilot that the torch can cut is small enough.' : `A pilot, if one is cut, stays at ⌀${facts.format.length(pilot)} or less.`} Each mark is a start for the consumables.`,
      value: quantity(pattern.holeDiameter, 'mm'),
      ...(pilot === undefined ? {} : { limit: quantity(pilot, 'mm') }),
      source: HARD_EDGE,
    }),
  ];
}
