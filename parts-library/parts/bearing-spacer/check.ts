// The rules of a bearing spacer: its length, the race it touches, the shaft it passes.
import {
  checkLabel,
  checkMaterialCaution,
  checkPlateSize,
  checkSmallHoles,
  checkWebs,
  digits,
  found,
  judge,
  quantity,
  type Facts,
} from '../../checks/index.js';
import { bearingSpacerSource, findMaterial } from '../../handbook/index.js';
import type { Finding, Part } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import { checkLength } from './check-length.js';
import type { BearingSpacer } from './parameters.js';
import { boreOf } from './sizes.js';

/** Least width of the ring on the race, mm: narrower, and it digs in. */
const LEAST_CONTACT = 1.5;

/** How far from the shaft's middle the outside may come: the ring hangs in its bore. */
function checkRace(p: BearingSpacer, facts: Facts): readonly Finding[] {
  const { length } = facts.format;
  const within = facts.cutTolerance(p.outside.mm);
  const eccentric = boreOf(p) - p.shaft.mm;
  const reach = p.outside.mm + eccentric;
  const worst = reach + within.amount;
  const touches = reach >= p.outerShoulder.mm;
  const overhangs = reach > p.innerShoulder.mm;
  const mayOverhang = worst > p.innerShoulder.mm;
  return [
    found({
      code: 'spacer-own-race',
      level: judge(['stop', touches], ['caution', overhangs], ['note', mayOverhang]),
      anchor: { x: 0, y: p.outside.mm / 2 },
      field: 'outside',
      title: touches
        ? 'The ring touches the outer race'
        : overhangs
          ? `The ring stands over the inner race by up to ${length((reach - p.innerShoulder.mm) / 2)}`
          : 'The ring touches the inner race alone',
      says: touches
        ? `Hanging in its bore it reaches ⌀${length(reach)}; the outer race begins at ⌀${length(p.outerShoulder.mm)}. It would stop the bearing. A smaller outside would do.`
        : overhangs
          ? `Hanging in its bore it reaches ⌀${length(reach)}, the race ends at ⌀${length(p.innerShoulder.mm)}: it may rub on seal or cage. A smaller outside or a closer bore would do.`
          : mayOverhang
            ? `As cut it may reach ⌀${length(worst)}, the race ends at ⌀${length(p.innerShoulder.mm)}: measure the outside at both faces, and file or turn what is over.`
            : `At worst it reaches ⌀${length(worst)}; the race ends at ⌀${length(p.innerShoulder.mm)}.`,
      value: quantity(reach, 'mm', within.amount),
      limit: quantity(touches ? p.outerShoulder.mm : p.innerShoulder.mm, 'mm'),
      formula: `${digits(p.outside.mm)} + (${digits(boreOf(p))} − ${digits(p.shaft.mm)}) = ${digits(reach)}; as cut ${digits(reach)} + ${digits(within.amount)} = ${digits(worst)}`,
      source: bearingSpacerSource,
    }),
  ];
}

function checkContact(p: BearingSpacer, facts: Facts): readonly Finding[] {
  const { length } = facts.format;
  const width = (Math.min(p.outside.mm, p.innerShoulder.mm) - boreOf(p)) / 2;
  return [
    found({
      code: 'spacer-contact',
      level: judge(['stop', width <= 0], ['caution', width < LEAST_CONTACT]),
      anchor: { x: -p.outside.mm / 2, y: 0 },
      field: p.bore === undefined ? 'outside' : 'bore',
      title:
        width <= 0
          ? 'The ring does not bear on the inner race'
          : `The ring bears on ${length(width)} of the inner race, all round`,
      says:
        width < LEAST_CONTACT
          ? `At least ${length(LEAST_CONTACT)}, or it digs in and the bolt comes loose; the race’s own corner radius comes off that too.`
          : 'Less the corner radius of the race.',
      value: quantity(width, 'mm'),
      limit: quantity(LEAST_CONTACT, 'mm'),
      formula: `(${digits(Math.min(p.outside.mm, p.innerShoulder.mm))} − ${digits(boreOf(p))}) ÷ 2 = ${digits(width)}`,
      source: {
        title: 'Contact of a spacer on a race',
        where: 'a ring 1.5 mm wide or more beside the race’s corner',
        certainty: 'from memory',
      },
    }),
  ];
}

function checkBore(p: BearingSpacer, facts: Facts): readonly Finding[] {
  const bore = boreOf(p);
  const within = facts.cutTolerance(bore);
  const { length } = facts.format;
  const passes = bore - within.amount;
  const isTight = passes < p.shaft.mm;
  return [
    found({
      code: 'spacer-bore',
      level: judge(['caution', isTight]),
      subject: { featureId: 'bore' },
      anchor: { x: 0, y: -bore / 2 },
      field: 'bore',
      title: isTight
        ? `The shaft may not pass: ⌀${length(passes)} is what a cut bore gives for certain`
        : `The shaft passes a bore as cut, at its smallest ⌀${length(passes)}`,
      says: isTight
        ? `Leave out the bore for 1 mm over the shaft, or cut it under size and bore it.`
        : 'It must drop over the shaft by itself: a ring that binds is not parallel to the race.',
      value: quantity(passes, 'mm'),
      limit: quantity(p.shaft.mm, 'mm'),
      formula: `${digits(bore)} − ${digits(within.amount)} = ${digits(passes)}`,
      source: within.source,
    }),
  ];
}

/** All findings of the spacer. */
export function checkBearingSpacer(part: Part, p: BearingSpacer, facts: Facts): readonly Finding[] {
  const material = findMaterial(p.material);
  return [
    ...checkLength(p, facts),
    ...checkRace(p, facts),
    ...checkContact(p, facts),
    ...checkBore(p, facts),
    ...(material.found ? checkMaterialCaution(material.row) : []),
    ...checkSmallHoles(part, facts, () => ({ field: p.bore === undefined ? 'shaft' : 'bore' })),
    ...checkWebs(part, facts),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...checkPlateSize(part, facts),
  ];
}
