// The rules of a ring spacer, in the order in which they are read.
import {
  checkLabel,
  checkMaterialCaution,
  checkMeasuring,
  checkPlateSize,
  checkSmallHoles,
  checkWebs,
  digits,
  found,
  judge,
  quantity,
  type Facts,
} from '../../checks/index.js';
import { boltEnvelope, findMaterial } from '../../handbook/index.js';
import type { Finding, Part } from '../../model/index.js';
import { patternOf, underFields } from '../shared/bolted.js';
import { letterText } from '../lettering/strokes.js';
import { checkStack } from './check-stack.js';
import type { RingSpacer } from './parameters.js';
import { resolveRing, type Ring } from './resolve.js';

/** What passes a bore as the torch leaves it. */
function checkBore(p: RingSpacer, { bore, thread }: Ring, facts: Facts): readonly Finding[] {
  if (p.boreMade === 'drill') return [];
  const within = facts.cutTolerance(bore);
  const { length } = facts.format;
  const passes = bore - within.amount;
  const isBolt = p.bore === undefined;
  const isTight = isBolt && passes < thread.diameter;
  return [
    found({
      code: 'bore-as-cut',
      level: isTight ? 'note' : 'pass',
      subject: { featureId: 'bore' },
      anchor: { x: bore / 2, y: 0 },
      field: isBolt ? 'holeFit' : 'bore',
      title: `Bore ${length(bore)} as cut ±${length(within.amount)}: ${length(passes)} passes for certain`,
      says: isTight
        ? `${thread.name} may bind in a bore at its smallest; a file, a loose fit or a hole kerf from a coupon would do.`
        : 'Taper and dross count in: measure the smallest end.',
      value: quantity(passes, 'mm'),
      limit: quantity(isBolt ? thread.diameter : bore, 'mm'),
      formula: `${digits(bore)} − ${digits(within.amount)} = ${digits(passes)}`,
      source: within.source,
    }),
  ];
}

/** Whether the bolt's head bears on the ring. */
function checkHead({ outside, bore, thread }: Ring, facts: Facts): readonly Finding[] {
  const envelope = boltEnvelope(thread);
  if (!envelope.found) return [];
  const { acrossFlats, acrossCorners } = envelope.row;
  const { length } = facts.format;
  // A bore larger than the head belongs to a shaft; the bolt is not what the ring goes on.
  if (bore >= acrossFlats.value) return [];
  const overhangs = outside < acrossCorners.value;
  const width = (Math.min(outside, acrossFlats.value) - bore) / 2;
  return [
    found({
      code: 'head-on-ring',
      level: judge(['note', overhangs]),
      anchor: { x: 0, y: Math.min(outside, acrossCorners.value) / 2 },
      field: 'outside',
      title: overhangs
        ? `The head of ${thread.name} stands over the outside`
        : `The head of ${thread.name} bears on ${length(width)} of the ring all round`,
      says: `Across flats ${length(acrossFlats.value)}, across corners ${length(acrossCorners.value)}.`,
      value: quantity(outside, 'mm'),
      limit: quantity(acrossCorners.value, 'mm'),
      source: acrossFlats.source,
    }),
  ];
}

/** How the bolt circle was measured; what suggests another size would change a field by a name that is not ours. */
function checkHoles(p: RingSpacer, { holes }: Ring, facts: Facts): readonly Finding[] {
  if (holes === undefined || p.pattern === undefined) return [];
  const { size, places, circle } = holes;
  const pattern = patternOf(size, places, { across: circle.diameter, plusMinus: circle.plusMinus });
  const findings = checkMeasuring(pattern, circle, p.pattern.circle.measure.readings, facts);
  return underFields(
    findings.filter(({ remedies }) => remedies === undefined),
    { boltCircle: 'pattern.circle' },
  );
}

/** All findings of the ring. */
export function checkRingSpacer(part: Part, p: RingSpacer, facts: Facts): readonly Finding[] {
  const answer = resolveRing(p);
  const material = findMaterial(p.material);
  if (!answer.ok) return [];
  const ring = answer.value;
  const drilled = (field: string, says: string) => ({
    field,
    remedies: [
      { says, change: [{ op: 'add' as const, path: `/${field.replace('.', '/')}`, value: 'drill' }] },
    ],
  });
  return [
    ...checkStack(p, ring, facts),
    ...(material.found ? checkMaterialCaution(material.row) : []),
    ...checkSmallHoles(part, facts, ({ id }) =>
      id === 'bore'
        ? drilled('boreMade', 'Mark the bore and drill it')
        : drilled('pattern.holes', 'Mark the holes and drill them'),
    ),
    ...checkWebs(part, facts),
    ...checkBore(p, ring, facts),
    ...checkHead(ring, facts),
    ...checkHoles(p, ring, facts),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...checkPlateSize(part, facts),
  ];
}
