// Checks of a cable stop: ferrule, slot, bending of the ear, weld or foot.
import {
  checkEdgeDistance,
  checkEdgeFillet,
  checkEdgeWeld,
  checkLabel,
  checkMaterialCaution,
  checkOldTube,
  checkSmallHoles,
  checkTapping,
  checkUse,
  checkWebs,
  digits,
  found,
  judge,
  mergeNotChecked,
  notCheckedLoad,
  quantity,
  type EdgeWeld,
  type Facts,
} from '../../checks/index.js';
import { findMaterial, type Source } from '../../handbook/index.js';
import type { Finding, Part } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import { patternOf } from '../shared/bolted.js';
import { checkAlong, checkCope, checkWeldMetal } from '../shared/ear-checks.js';
import { checkBend } from '../shared/foot-checks.js';
import { checkBending, checkFootPull } from './check-load.js';
import type { CableStop } from './parameters.js';
import { filletOf, resolveStop, thinnerOf, type ResolvedStop } from './resolve.js';

const FERRULES: Source = {
  title: 'Cable housings in a plate',
  where: 'the shoulder bears on 1 mm of metal all round; the slot passes the cable and holds the neck',
  certainty: 'common practice',
};
/** Ring that a shoulder bears on, room of a cable in its slot, hold of the neck, mm. */
const LEAST_RING = 1;
const CABLE_ROOM = 0.4;
const NECK_HELD = 1;

const SLOT_CUT: Source = {
  title: 'An open slot is two cuts',
  where: 'narrower than the kerf it closes; below 1.5 kerfs the strip between the cuts burns away unevenly',
  certainty: 'common practice',
};

function checkFerrule(p: CableStop, r: ResolvedStop, facts: Facts): readonly Finding[] {
  const { length } = facts.format;
  const opening = r.thread === undefined ? r.hole : r.thread.diameter;
  const ring = (p.shoulder.mm - opening) / 2;
  const place = { anchor: r.ear.centre, source: FERRULES } as const;
  const slack = p.slot.mm - p.cable.mm;
  const held = p.neck.mm - p.slot.mm;
  return [
    found({
      ...place,
      code: 'shoulder',
      level: judge(['stop', ring <= 0], ['caution', ring < LEAST_RING]),
      field: 'shoulder',
      title: `Shoulder ⌀${length(p.shoulder.mm)} bears on ${length(Math.max(0, ring))} round ⌀${length(opening)}`,
      says:
        ring < LEAST_RING
          ? 'It pulls through or cocks. A smaller hole, a larger ferrule, or a washer under it would do.'
          : 'The face under it is scraped clean of dross, or the housing stands askew.',
      value: quantity(ring, 'mm'),
      limit: quantity(LEAST_RING, 'mm'),
      formula: `(${digits(p.shoulder.mm)} − ${digits(opening)}) ÷ 2 = ${digits(ring)}`,
    }),
    ...(p.seat === 'slot'
      ? [
          found({
            ...place,
            code: 'slot-passes',
            level: judge(['stop', slack < 0], ['caution', slack < CABLE_ROOM]),
            field: 'slot',
            title: `Slot ${length(p.slot.mm)} for a cable of ${length(p.cable.mm)}`,
            says:
              slack < CABLE_ROOM
                ? 'The cable does not drop in, or frays on the slot’s edges. A wider slot would do.'
                : 'The cable drops in; break the slot’s edges, they fray it.',
            value: quantity(slack, 'mm'),
            limit: quantity(CABLE_ROOM, 'mm'),
          }),
          found({
            ...place,
            code: 'neck-held',
            level: judge(['stop', held <= 0], ['caution', held < NECK_HELD]),
            field: 'slot',
            title: `Neck ⌀${length(p.neck.mm)} is held by ${length(Math.max(0, held))} over the slot`,
            says:
              held < NECK_HELD
                ? 'The ferrule jumps out when the cable goes slack. A narrower slot would do.'
                : 'The ferrule stays in when the cable goes slack.',
            value: quantity(held, 'mm'),
            limit: quantity(NECK_HELD, 'mm'),
          }),
          found({
            code: 'slot-cut',
            level: judge(
              ['stop', p.slot.mm <= facts.kerf.amount],
              ['caution', p.slot.mm < 1.5 * facts.kerf.amount],
            ),
            anchor: { x: r.ear.centre.x, y: r.ear.centre.y + r.nose },
            field: 'slot',
            title: `Slot ${length(p.slot.mm)} with a kerf of ${length(facts.kerf.amount)}`,
            says:
              p.slot.mm < 1.5 * facts.kerf.amount
                ? 'Too narrow for two cuts. A wider slot, or a closed hole and a saw cut to it would do.'
                : 'Two cuts, one on each side.',
            value: quantity(p.slot.mm, 'mm'),
            limit: quantity(1.5 * facts.kerf.amount, 'mm'),
            formula: `1.5 × ${digits(facts.kerf.amount)} = ${digits(1.5 * facts.kerf.amount)}`,
            source: SLOT_CUT,
          }),
        ]
      : []),
  ];
}

function checkEdge(p: CableStop, r: ResolvedStop, weld: EdgeWeld, facts: Facts): readonly Finding[] {
  return [
    ...checkWeldMetal(weld.material, 'material'),
    ...checkEdgeFillet(weld, facts),
    ...checkEdgeWeld(
      weld,
      p.pull === undefined
        ? undefined
        : { away: 0, along: p.pull.value, moment: 0, folding: p.pull.value * r.ear.centre.y },
      facts,
    ),
    ...checkCope(
      r.ear.edge,
      p.edge === 'coped' ? p.tube.mm : undefined,
      { width: 'base', tube: 'tube' },
      facts,
    ),
    ...(p.edge === 'along'
      ? checkAlong(p.tube.mm, -p.thickness.mm / 2, p.thickness.mm, { tube: 'tube', edge: 'edge' }, facts)
      : []),
    ...checkOldTube('tube'),
  ];
}

export function checkCableStop(part: Part, p: CableStop, facts: Facts): readonly Finding[] {
  const answer = resolveStop(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const r = answer.value;
  const weld: EdgeWeld = {
    leg: filletOf(p, facts.format.unit),
    sides: p.weldSides,
    length: r.ear.edge.length,
    thickness: p.thickness.mm,
    thinner: thinnerOf(p),
    material: material.row,
    anchor: { x: 0, y: 0 },
    fields: { leg: 'weldLeg', length: 'base', sides: 'weldSides' },
  };
  const pattern = patternOf(r.foot, r.laid.holes);
  const tapped =
    r.adjuster === undefined
      ? []
      : checkTapping(
          patternOf(r.adjuster, [{ featureId: 'cable', at: r.ear.centre }]),
          p.thickness.mm,
          facts,
        ).map((finding) => ({ ...finding, field: 'adjuster' }));
  return mergeNotChecked([
    ...checkUse(p.use),
    ...(p.pull === undefined
      ? [
          notCheckedLoad(
            'pull',
            'bending of the ear, its weld or foot',
            'Give the cable’s greatest pull, and how the stop bends and holds is checked.',
          ),
        ]
      : []),
    ...checkFerrule(p, r, facts),
    ...checkBending(p, r, material.row, facts),
    ...tapped,
    ...(p.foot === 'weld'
      ? checkEdge(p, r, weld, facts)
      : [
          ...checkEdgeDistance(part, pattern, facts, 'inset'),
          ...checkBend(p, r.laid, r.foot.diameter, facts),
          ...checkFootPull(p, r, facts),
          ...checkTapping(pattern, p.thickness.mm, facts),
        ]),
    ...checkWebs(part, facts),
    ...checkSmallHoles(part, facts, ({ id }) =>
      id === 'cable'
        ? { field: 'neck' }
        : {
            field: 'holes',
            remedies: [
              {
                says: 'Mark the holes and drill them',
                change: [{ op: 'add', path: '/holes', value: 'drill' }],
              },
            ],
          },
    ),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...checkMaterialCaution(material.row),
  ]);
}
