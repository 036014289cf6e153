// A keyway in the plate itself: crushing of the plate beside the key, and the advice to put it in the hub.
import { findKey, keyStress, strengthAt, type Material } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { Facts } from './facts.js';
import { digits, found, judge, percent, quantity } from './findings.js';

/** Crushing stress allowed beside a key, as a share of yield: two thirds, static, keyed joint that does not reverse. */
const CRUSHING_SHARE = 2 / 3;

export function checkKeyway(
  input: {
    readonly bore: number;
    readonly system: 'metric' | 'inch';
    readonly thickness: number;
    readonly material: Material;
    readonly newtonMetres?: number | undefined;
  },
  facts: Facts,
): readonly Finding[] {
  const key = findKey(input.bore, input.system);
  const strength = strengthAt(input.material, input.thickness);
  if (!key.found || strength === undefined) return [];
  const place = {
    code: 'keyway',
    subject: { featureId: 'centre' },
    anchor: { x: 0, y: input.bore / 2 + key.row.hubDepth },
    field: 'keyway',
  } as const;
  const advice =
    'Put the keyway in a hub as long as the shaft is thick, and weld or bolt the plate to the hub.';
  const remedies = [
    { says: 'No keyway in the plate', change: [{ op: 'add' as const, path: '/keyway', value: 'none' }] },
  ];
  if (input.newtonMetres === undefined) {
    return [
      found({
        ...place,
        level: 'caution',
        title: `Keyway ${key.row.name} in ${facts.format.length(input.thickness)} plate not checked: no torque given`,
        says: `A key bears on the plate's thickness only. Give the torque. ${advice}`,
        source: key.row.source,
        remedies,
      }),
    ];
  }
  const stress = keyStress(input.newtonMetres, input.bore, key.row, input.thickness);
  const limit = CRUSHING_SHARE * strength.yieldMegapascals;
  const share = stress.crushing / limit;
  return [
    found({
      ...place,
      level: judge(['stop', share > 1], ['caution', true]),
      title: `Keyway ${key.row.name} in the plate: crushing ${facts.format.stress(stress.crushing)}, ${percent(share)} used`,
      says:
        share > 1
          ? `The plate crushes beside the key. ${advice}`
          : `It holds statically; the sides are plasma cut and tapered, so that the key bears on less. ${advice}`,
      value: quantity(stress.crushing, 'MPa'),
      limit: quantity(limit, 'MPa'),
      formula: `σ = 4T/(D·h·L) = 4 × ${digits(input.newtonMetres * 1000, 0)} ÷ (${digits(input.bore)} × ${digits(key.row.height)} × ${digits(input.thickness)}) = ${digits(stress.crushing)}; limit ⅔ × ${strength.yieldMegapascals} = ${digits(limit)}`,
      source: stress.source,
      remedies,
    }),
  ];
}
