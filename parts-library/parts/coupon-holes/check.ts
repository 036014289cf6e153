// What is to be said of a hole ladder before it is cut, and of the hole that was measured.
import { checkSmallHoles, digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import type { Finding, Part } from '../../model/index.js';
import { couponSource, holeKerfFrom, holeTaper, holeVerdict } from '../../process/index.js';
import { checkCoupon } from '../shared/coupon/checks.js';
import type { CouponHoles } from './parameters.js';
import { holeLadder, type HoleLadder } from './resolve.js';

/** Out of round by more, a bolt finds it, mm. */
const ROUND_ENOUGH = 0.3;
/** Lean called acceptable for conventional plasma, degrees. */
const LEAN_ENOUGH = 4;

/** A ladder goes below what is comfortable on purpose; only what cannot be cut at all stops it. */
function checkSizes(part: Part, { diameters }: HoleLadder, facts: Facts): readonly Finding[] {
  const can = diameters.filter(
    (diameter) => holeVerdict(diameter, part.thickness, facts.kerf.amount).verdict !== 'drill',
  );
  const remedies =
    can.length === 0 || can.length === diameters.length
      ? {}
      : {
          remedies: [
            {
              says: 'Leave out what cannot be cut',
              change: [
                {
                  op: 'add' as const,
                  path: '/diameters',
                  value: can.map((diameter) => `${digits(diameter, 4)} mm`).join(', '),
                },
              ],
            },
          ],
        };
  return checkSmallHoles(part, facts, () => ({ field: 'diameters', ...remedies })).map((finding): Finding =>
    finding.level === 'caution' ? { ...finding, level: 'note' } : finding,
  );
}

function checkReading(p: CouponHoles, facts: Facts): readonly Finding[] {
  const { readNominal, bottomX, bottomY } = p;
  if (readNominal === undefined || bottomX === undefined || bottomY === undefined) return [];
  const { length, lengthWithin } = facts.format;
  const kerfSet = p.kerfSet?.mm ?? facts.holeKerf.amount;
  const smallest = Math.min(bottomX.mm, bottomY.mm);
  const mean = (bottomX.mm + bottomY.mm) / 2;
  const kerf = holeKerfFrom(readNominal.mm, mean, kerfSet);
  const outOfRound = Math.abs(bottomX.mm - bottomY.mm);
  const place = { field: 'bottomX', source: couponSource } as const;
  const findings: Finding[] = [
    found({
      ...place,
      code: 'hole-kerf-measured',
      level: judge(['caution', kerf <= 0], ['note', true]),
      title: `Hole kerf ${lengthWithin(kerf, outOfRound / 2)} at ⌀${length(readNominal.mm)}`,
      says: `A bolt of ${length(smallest)} is the largest that passes this hole. Keep the hole kerf apart from the straight one, with its speed.${kerf <= 0 ? ' A kerf of nothing is a slip of the pen: read again.' : ''}`,
      value: quantity(kerf, 'mm', outOfRound / 2),
      formula: `path ${digits(readNominal.mm)} − ${digits(kerfSet, 3)} = ${digits(readNominal.mm - kerfSet, 3)}; ${digits(mean, 3)} − ${digits(readNominal.mm - kerfSet, 3)} = ${digits(kerf, 3)}`,
    }),
    found({
      ...place,
      code: 'hole-round',
      level: judge(['caution', outOfRound > ROUND_ENOUGH + 1e-9]),
      title: `Out of round by ${length(outOfRound)}, ${length(ROUND_ENOUGH)} at most`,
      says: 'More is backlash, a step at the entry, or speed: try an arc of entry, or the next slower row.',
      value: quantity(outOfRound, 'mm'),
      limit: quantity(ROUND_ENOUGH, 'mm'),
      source: {
        title: 'Roundness of a bolt hole',
        where: 'about what ISO 273 clearance forgives',
        certainty: 'from memory',
      },
    }),
  ];
  if (p.topX === undefined || p.topY === undefined) return findings;
  const top = (p.topX.mm + p.topY.mm) / 2;
  const degrees = holeTaper(top, mean, p.thickness.mm);
  return [
    ...findings,
    found({
      ...place,
      code: 'hole-taper',
      level: judge(['caution', degrees > LEAN_ENOUGH + 1e-9]),
      field: 'topX',
      title: `The wall leans ${digits(degrees, 1)}°, ${length(Math.abs(top - mean))} over the thickness`,
      says: `Up to ${LEAN_ENOUGH}° is called acceptable for conventional plasma. ${top > mean ? 'Wider on top: slower, or the torch lower.' : 'Wider below: faster, or the torch higher.'}`,
      value: quantity(degrees, 'degrees'),
      limit: quantity(LEAN_ENOUGH, 'degrees'),
      formula: `atan(${digits(Math.abs(top - mean), 3)} ÷ (2 × ${digits(p.thickness.mm)})) = ${digits(degrees, 2)}°`,
      source: {
        title: 'Lean of a plasma cut',
        where: 'a published manual: cut angle below 4° averaged over four sides',
        certainty: 'published',
      },
    }),
  ];
}

export function checkCouponHoles(part: Part, p: CouponHoles, facts: Facts): readonly Finding[] {
  const answer = holeLadder(p, facts.format);
  if (!answer.ok) return [];
  const { setting, texts } = answer.value;
  return [
    ...checkReading(p, facts),
    ...checkSizes(part, answer.value, facts),
    ...checkCoupon(part, p, setting, texts, 'diameters', facts),
  ];
}
