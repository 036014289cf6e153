// Checks of a tube cap or base plate: vent, shelf for the weld, fillet, bolts beside the tube, plate bending.
import {
  checkEdgeDistance,
  checkEdgeFillet,
  checkLabel,
  checkMaterialCaution,
  checkOldTube,
  checkSmallHoles,
  checkSpacing,
  checkTapping,
  checkUse,
  checkVent,
  checkWebs,
  digits,
  found,
  judge,
  mergeNotChecked,
  quantity,
  type Facts,
} from '../../checks/index.js';
import { findMaterial, type Material, type Source } from '../../handbook/index.js';
import type { Finding, Part } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import { nearestPair, patternOf } from '../shared/bolted.js';
import { checkWeldMetal } from '../shared/ear-checks.js';
import { checkBaseLoad, checkBesideTube } from './check-base.js';
import type { TubeCap } from './parameters.js';
import { aroundOf, filletOf, resolveCap, thinnerOf, type ResolvedCap } from './resolve.js';

const SHELF: Source = {
  title: 'Shelf for the bead',
  where: 'a fillet needs its leg of flat beside the joint, and 1 mm to be seen',
  certainty: 'common practice',
};
/** Flat beyond the fillet's leg, so that its toe can be seen, mm. */
const SEEN = 1;

/** Room for the bead: outside the tube, on its end, or inside it. */
function checkShelf(p: TubeCap, r: ResolvedCap, facts: Facts): readonly Finding[] {
  const { length } = facts.format;
  const leg = filletOf(p, facts.format.unit);
  const place = {
    code: 'weld-shelf',
    subject: { featureId: 'outline' },
    anchor: { x: -r.tube.width / 2, y: 0 },
    source: SHELF,
  } as const;
  if (p.kind === 'plug') {
    const loose = p.play.mm > 3.2;
    return [
      found({
        ...place,
        level: judge(['caution', loose], ['note', p.play.mm < 0.3]),
        field: 'play',
        title: `Plug with ${length(p.play.mm)} of play, to be let in by ${length(leg)}`,
        says: loose
          ? 'A gap over 1.6 mm a side asks for a larger leg by the gap.'
          : p.play.mm < 0.3
            ? 'The seam inside the tube may keep it out: file a notch for it, or leave more play.'
            : 'Let it in by the leg, so that the fillet lies in the corner.',
        value: quantity(p.play.mm, 'mm'),
        limit: quantity(3.2, 'mm'),
      }),
    ];
  }
  if (p.kind === 'cap' && p.shelf.mm <= 0) {
    const setIn = -p.shelf.mm;
    const isOff = setIn >= p.wall.mm;
    return [
      found({
        ...place,
        level: judge(['stop', isOff], ['caution', setIn < 1]),
        field: 'shelf',
        title: isOff
          ? `Set in ${length(setIn)}, the cap falls into a tube with a wall of ${length(p.wall.mm)}`
          : `Set in ${length(setIn)} on a wall of ${length(p.wall.mm)}`,
        says: isOff
          ? 'Less than the wall would do, or a plug inside the tube.'
          : setIn < 1
            ? 'Flush there is no corner for a bead: grind a bevel on the plate, or set it in by about half the wall or more.'
            : 'The bead lies on the tube’s end against the plate’s edge and is ground flush.',
        value: quantity(setIn, 'mm'),
        limit: quantity(p.wall.mm, 'mm'),
      }),
    ];
  }
  const room = Math.min(
    (r.plate.width - r.tube.width) / 2,
    r.plate.isRound && !r.tube.isRound
      ? r.plate.width / 2 - Math.hypot(r.tube.width, r.tube.height) / 2 + (Math.SQRT2 - 1) * r.tube.corner
      : (r.plate.height - r.tube.height) / 2,
  );
  const wanted = leg + SEEN;
  return [
    found({
      ...place,
      level: judge(['stop', room < 0 && p.kind === 'base'], ['caution', room < wanted - 1e-9]),
      field: p.kind === 'base' ? 'width' : 'shelf',
      title: `${length(room)} of plate beside the tube, ${length(wanted)} wanted for the fillet`,
      says:
        room < wanted - 1e-9
          ? 'The bead runs over the plate’s edge and melts it off. A larger plate, or a smaller leg would do.'
          : 'Room for the fillet all round, and its toe can be seen.',
      value: quantity(room, 'mm'),
      limit: quantity(wanted, 'mm'),
      formula: `${digits(leg)} + ${SEEN} = ${digits(wanted)}`,
    }),
  ];
}

function checkFillet(p: TubeCap, r: ResolvedCap, material: Material, facts: Facts): readonly Finding[] {
  return checkEdgeFillet(
    {
      leg: filletOf(p, facts.format.unit),
      sides: p.weldSides,
      length: aroundOf(p.kind === 'plug' ? r.inside : r.tube),
      thickness: p.thickness.mm,
      thinner: thinnerOf(p),
      material,
      anchor: { x: r.tube.width / 2, y: 0 },
      fields: { leg: 'weldLeg', length: 'outside', sides: 'weldSides' },
    },
    facts,
  );
}

/** A vent need not be round: what is rough for a bolt is good enough for air. */
function forVent(finding: Finding): Finding {
  return finding.subject.featureId === 'vent' && finding.level === 'caution'
    ? { ...finding, level: 'note', says: `${finding.says} Good enough for a vent.` }
    : finding;
}

export function checkTubeCap(part: Part, p: TubeCap, facts: Facts): readonly Finding[] {
  const answer = resolveCap(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const r = answer.value;
  const pattern = patternOf(r.size, r.holes);
  const isBase = p.kind === 'base';
  return mergeNotChecked([
    ...checkUse(p.use),
    ...checkVent(p.vent, 'vent', p.vent === 'here' ? { x: 0, y: 0 } : undefined),
    ...checkOldTube('outside'),
    ...checkShelf(p, r, facts),
    ...checkWeldMetal(material.row, 'material'),
    ...checkFillet(p, r, material.row, facts),
    ...(isBase
      ? [
          ...checkEdgeDistance(part, pattern, facts, 'inset'),
          ...checkSpacing({ ...pattern, holes: nearestPair(r.holes) }, facts),
          ...checkBesideTube(p, r, facts),
          ...checkBaseLoad(p, r, material.row, facts),
          ...checkTapping(pattern, p.thickness.mm, facts),
        ]
      : []),
    ...checkWebs(part, facts),
    ...checkSmallHoles(part, facts, ({ id }) =>
      id === 'vent'
        ? {
            field: 'ventDiameter',
            remedies: [
              { says: 'Drill the vent in the tube', change: [{ op: 'add', path: '/vent', value: 'tube' }] },
            ],
          }
        : {
            field: 'holes',
            remedies: [
              {
                says: 'Mark the holes and drill them',
                change: [{ op: 'add', path: '/holes', value: 'drill' }],
              },
            ],
          },
    ).map(forVent),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...checkMaterialCaution(material.row),
  ]);
}
