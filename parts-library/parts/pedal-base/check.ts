// Checks of a pedal base: window, bolts and their edges, pivot ears, loads.
import {
  checkEdgeDistance,
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
  quantity,
  type Facts,
} from '../../checks/index.js';
import { boltEnvelope, findMaterial, type Source } from '../../handbook/index.js';
import type { Finding, Part } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import { patternOf } from '../shared/bolted.js';
import { checkWeldMetal } from '../shared/ear-checks.js';
import { checkLoad } from './check-load.js';
import type { PedalBase } from './parameters.js';
import { earPlace, resolveBase, type ResolvedBase } from './resolve.js';

const ROOM: Source = {
  title: 'Push-rod window',
  where: 'the rod clears it by 2 mm over the whole swing; a spigot by 0.5 mm on diameter',
  certainty: 'common practice',
};
const ROD_ROOM = 2;
const SPIGOT_ROOM = 0.5;

/** How far the rod’s pin leaves its line over the swing, mm: half of it before square, half after. */
export const rodRise = (p: PedalBase): number =>
  p.pivotDrop.mm * (1 - Math.cos((p.swing.value * Math.PI) / 360));

function checkWindow(p: PedalBase, r: ResolvedBase, facts: Facts): readonly Finding[] {
  const { length } = facts.format;
  const rise = rodRise(p);
  const room = Math.min((r.windowHeight - p.rod.mm) / 2 - rise, (p.windowWidth.mm - p.rod.mm) / 2);
  const place = { subject: { featureId: 'window' }, anchor: { x: 0, y: 0 }, source: ROOM } as const;
  return [
    found({
      ...place,
      code: 'rod-room',
      level: judge(['stop', room < 0], ['caution', room < ROD_ROOM]),
      field: p.window === 'slot' ? 'windowHeight' : 'windowWidth',
      title:
        room < 0 ? 'The push rod touches the window' : `The push rod clears the window by ${length(room)}`,
      says: `Its pin leaves the line by ${length(rise)} over the swing.${room < ROD_ROOM ? ' A rod that touches jams or saws through: a larger window, or an upright slot would do.' : ''}`,
      value: quantity(room, 'mm'),
      limit: quantity(ROD_ROOM, 'mm'),
      formula: `${digits(p.pivotDrop.mm)} × (1 − cos ${digits(p.swing.value / 2)}°) = ${digits(rise)}`,
    }),
    ...(p.spigot === undefined
      ? []
      : [
          found({
            ...place,
            code: 'spigot',
            level: judge(
              ['stop', p.windowWidth.mm < p.spigot.mm],
              ['caution', p.windowWidth.mm < p.spigot.mm + SPIGOT_ROOM],
            ),
            field: 'windowWidth',
            title: `Spigot ⌀${length(p.spigot.mm)} in a window of ${length(p.windowWidth.mm)}`,
            says:
              p.windowWidth.mm < p.spigot.mm + SPIGOT_ROOM
                ? 'A plasma-cut window holds no fit: leave it room, the bolts place the cylinder.'
                : 'It goes in with room to spare; the bolts place the cylinder.',
            value: quantity(p.windowWidth.mm - p.spigot.mm, 'mm'),
            limit: quantity(SPIGOT_ROOM, 'mm'),
          }),
        ]),
  ];
}

/** Heads or washers of the cylinder's bolts against the ears that stand beside them. */
function checkEars(p: PedalBase, r: ResolvedBase, facts: Facts): readonly Finding[] {
  const envelope = boltEnvelope(r.cylinder.thread);
  if (!envelope.found) return [];
  const seat = Math.max(envelope.row.acrossCorners.value, envelope.row.washerOutside.value) / 2;
  const { inner, outer, low, high } = earPlace(p, r.pivotY);
  const room = Math.min(
    ...r.cylinderHoles.map(({ at }) =>
      Math.hypot(
        Math.max(inner - Math.abs(at.x), Math.abs(at.x) - outer, 0),
        Math.max(low - at.y, at.y - high, 0),
      ),
    ),
  );
  return [
    found({
      code: 'ear-room',
      level: judge(['stop', room < seat]),
      subject: { featureId: 'cylinder.1' },
      anchor: r.cylinderHoles[0]?.at ?? { x: 0, y: 0 },
      field: 'gap',
      title:
        room < seat
          ? `An ear stands on a head or nut of ${r.cylinder.thread.name}`
          : 'Heads and nuts of the cylinder clear the ears',
      says: `From bolt centre to the nearest ear ${facts.format.length(room)}; head or washer needs ${facts.format.length(seat)}. Another gap, a shorter ear base, or a turned flange would do.`,
      value: quantity(room, 'mm'),
      limit: quantity(seat, 'mm'),
      source: envelope.row.washerOutside.source,
    }),
  ];
}

export function checkPedalBase(part: Part, p: PedalBase, facts: Facts): readonly Finding[] {
  const answer = resolveBase(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const r = answer.value;
  const cylinder = patternOf(r.cylinder, r.cylinderHoles);
  const mount = patternOf(r.mount, r.mountHoles);
  return mergeNotChecked([
    ...checkUse(p.use),
    ...checkWindow(p, r, facts),
    ...checkLoad(p, r, material.row, facts),
    ...checkEdgeDistance(part, cylinder, facts, 'windowWidth'),
    ...(r.mountHoles.length === 0 ? [] : checkEdgeDistance(part, mount, facts, 'mountInset')),
    ...checkEars(p, r, facts),
    ...checkTapping(cylinder, p.thickness.mm, facts),
    ...(p.mount === 'weld' || p.pivotMount === 'welded' ? checkWeldMetal(material.row, 'material') : []),
    ...(p.mount === 'weld' ? checkOldTube('mount') : []),
    ...checkWebs(part, facts),
    ...checkSmallHoles(part, facts, ({ id }) =>
      id.startsWith('mount')
        ? { field: 'mountBolt' }
        : id.startsWith('ear')
          ? { field: 'earBolt' }
          : id === 'window'
            ? { field: 'windowWidth' }
            : {
                field: 'holes',
                remedies: [
                  {
                    says: 'Mark the cylinder’s holes and drill them',
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
