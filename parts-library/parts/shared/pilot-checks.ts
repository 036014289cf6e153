// Pilots and drilled holes of a machined blank: what centres the part, and that no torch cuts its bolt holes.
import { digits, found, judge, quantity, type BoltPattern, type Facts } from '../../checks/index.js';
import type { Source } from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { Entry } from '../fields/index.js';

/** A pilot shorter than this is all chamfer, mm. */
export const LEAST_PILOT = 2;
export const PILOTS: Source = {
  title: 'Locating pilots',
  where: 'at least 2 mm of full diameter past the chamfers; the pilot centres, the bolts clamp',
  certainty: 'common practice',
};

/** Bolt holes that the torch would cut through, where a drill belongs. */
export function checkCutHoles(patterns: readonly BoltPattern[]): readonly Finding[] {
  return patterns.flatMap((pattern): readonly Finding[] => {
    const first = pattern.holes[0];
    if (first === undefined || pattern.made === 'drill' || pattern.made === 'tapped') return [];
    return [
      found({
        code: 'cut-holes',
        level: 'caution',
        subject: { featureId: first.featureId },
        anchor: first.at,
        field: `${pattern.fieldPrefix}holes`,
        title: `Bolt holes for ${pattern.thread.name} cut by the torch`,
        says: 'Their edges are hard, tapered and notched, and their places follow the cut, not the turned pilot. Mark them and drill from the bore.',
        source: PILOTS,
        remedies: [
          {
            says: 'Mark the holes and drill them',
            change: [{ op: 'add', path: `/${pattern.fieldPrefix.replace('.', '/')}holes`, value: 'drill' }],
          },
        ],
      }),
    ];
  });
}

/** The bore, `bore` mm long, must take hold of the hub's pilot. */
export function checkHubPilot(
  p: { readonly hubPilot: Entry; readonly hubPilotHeight?: Entry | undefined },
  bore: number,
  facts: Facts,
): readonly Finding[] {
  const format = facts.format.length;
  if (p.hubPilotHeight === undefined) {
    return [
      found({
        code: 'not-checked',
        level: 'note',
        field: 'hubPilotHeight',
        title: 'hold of the bore on the hub’s pilot',
        says: 'Measure how far the hub’s pilot stands out: the bore has to sit on at least 2 mm of its full diameter.',
        source: PILOTS,
      }),
    ];
  }
  const hold = Math.min(p.hubPilotHeight.mm, bore);
  const level = judge(['stop', hold < LEAST_PILOT]);
  return [
    found({
      code: 'hub-centric',
      level,
      subject: { featureId: 'centre' },
      anchor: { x: 0, y: p.hubPilot.mm / 2 },
      field: 'hubPilotHeight',
      title: `Bore sits on ${format(hold)} of the hub’s pilot, ${format(LEAST_PILOT)} wanted`,
      says:
        level === 'pass'
          ? 'Hub-centric: the pilot carries the centring, the bolts clamp.'
          : 'It would hang on its bolts. A hub with a longer pilot, or a turned ring, would do.',
      value: quantity(hold, 'mm'),
      limit: quantity(LEAST_PILOT, 'mm'),
      formula: `min(${digits(p.hubPilotHeight.mm)}, ${digits(bore)}) = ${digits(hold)}`,
      source: PILOTS,
    }),
  ];
}
