// Tapped holes: how much of the bolt the thread in this plate holds, and never tapping a plasma-cut edge.
import { findGrade, stripStrength, strengthAt, type GradeName, type Material } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { BoltPattern } from './bolt-holes.js';
import type { Facts } from './facts.js';
import { digits, found, judge, percent, quantity } from './findings.js';

/** Share of the bolt's strength below which the thread in the plate is a poor bargain. */
const FULL_STRENGTH = 1;
/** Half the bolt: with the usual preload of 0.75 proof the thread would strip while tightening. */
const PRELOAD_SHARE = 0.75 * 0.725;

/**
 * Strip strength of the threads in the plate against the bolt's breaking load.
 * FED-STD-H28/2B shear areas; engagement is the plate thickness.
 */
export function checkThreadEngagement(
  pattern: BoltPattern,
  plate: { readonly material: Material; readonly thickness: number },
  gradeName: GradeName,
  facts: Facts,
): readonly Finding[] {
  if (pattern.made !== 'tapped') return [];
  const grade = findGrade(gradeName, pattern.thread);
  const strength = strengthAt(plate.material, plate.thickness);
  const first = pattern.holes[0];
  if (!grade.found || strength === undefined || first === undefined) return [];
  const strip = stripStrength(
    pattern.thread,
    plate.thickness,
    grade.row.tensileMegapascals,
    strength.tensileMegapascals,
  );
  if (strip === undefined) {
    return [
      found({
        code: 'thread-engagement',
        level: 'note',
        subject: { featureId: first.featureId },
        anchor: first.at,
        field: `${pattern.fieldPrefix}bolt`,
        title: `Thread strength of ${pattern.thread.name} in ${facts.format.length(plate.thickness)} plate not known`,
        says: 'No limits of size are held for this thread, so its strip strength cannot be computed. One diameter of engagement in mild steel is the usual rule.',
        source: {
          title: 'Engagement of one diameter in mild steel',
          where: 'shop rule',
          certainty: 'common practice',
        },
      }),
    ];
  }
  const share = strip.newtons / strip.boltBreaksNewtons;
  const level = judge(['caution', share < PRELOAD_SHARE], ['note', share < FULL_STRENGTH]);
  return [
    found({
      code: 'thread-engagement',
      level,
      subject: { featureId: first.featureId },
      anchor: first.at,
      field: `${pattern.fieldPrefix}holes`,
      title: `${pattern.thread.name} in ${facts.format.length(plate.thickness)} ${plate.material.name} holds ${percent(Math.min(share, 1))} of the bolt`,
      says:
        share < FULL_STRENGTH
          ? `The ${strip.governs === 'plate thread' ? 'thread in the plate' : 'thread on the bolt'} strips at ${facts.format.force(strip.newtons)}; the ${gradeName} bolt breaks at ${facts.format.force(strip.boltBreaksNewtons)}. ${facts.format.length(strip.engagementNeeded)} of engagement would hold the whole bolt: a weld nut, a boss, or bolts through clearance holes would do.`
          : `The bolt breaks at ${facts.format.force(strip.boltBreaksNewtons)}, before the threads strip.`,
      value: quantity(plate.thickness, 'mm'),
      limit: quantity(strip.engagementNeeded, 'mm'),
      formula: `engagement ${digits(plate.thickness)}, wanted ${digits(strip.engagementNeeded)}; strip ${digits(strip.newtons / 1000)} kN ÷ bolt ${digits(strip.boltBreaksNewtons / 1000)} kN = ${digits(share)}`,
      source: strip.source,
      ...(share < PRELOAD_SHARE
        ? {
            remedies: [
              {
                says: 'Use clearance holes and nuts',
                change: [
                  {
                    op: 'add' as const,
                    path: `/${pattern.fieldPrefix.replace('.', '/')}holes`,
                    value: 'clearance',
                  },
                ],
              },
            ],
          }
        : {}),
    }),
  ];
}
