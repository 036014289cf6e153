// Derived values, ghosts, steps and hardware of a mounting plate.
import type { Facts } from '../../checks/index.js';
import type { Point } from '../../geometry/index.js';
import type { Derived, Ghost, HardwareItem, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { boltItems, headGhosts } from '../shared/bolted.js';
import { holeSteps } from '../shared/holes.js';
import { lineGhost } from '../shared/mating.js';
import { endsOf } from '../shared/slotted.js';
import { DEBURR } from '../shared/weld-steps.js';
import { motorMiddle, motorStretch } from './holes.js';
import type { MountingPlate } from './parameters.js';
import { pilotOpening, resolvePlate } from './resolve.js';

export function mountingPlateDerived(
  _part: Part,
  p: MountingPlate,
  { format }: DrawContext,
): readonly Derived[] {
  const answer = resolvePlate(p);
  if (!answer.ok) return [];
  const { base, motor } = answer.value;
  const circle = (id: string, field: string, set: typeof base): readonly Derived[] =>
    set?.circle === undefined
      ? []
      : [
          {
            id,
            field,
            title: id === 'motor' ? 'motor circle' : 'bolt circle',
            value: { amount: set.circle.diameter, unit: 'mm' },
            text: `⌀${format.length(set.circle.diameter)}; ${set.holes.length} holes ⌀${format.length(set.size.diameter)} for ${set.size.thread.name}`,
          },
        ];
  const first = motor?.holes[0];
  return [
    ...circle('circle', 'boltCircle', base),
    ...circle('motor', 'motorCircle', motor),
    ...(motor === undefined || first === undefined || motor.stretch.kind === 'none'
      ? []
      : [
          {
            id: 'motor.slot',
            field: motor.stretch.kind === 'round' ? 'swing' : 'travel',
            title: 'motor slots',
            value: { amount: motor.travel, unit: 'mm' as const },
            text: `${format.length(motor.size.diameter)} wide, ${format.length(motor.travel + motor.size.diameter)} over all; a bolt moves ${format.length(motor.travel)}`,
          },
        ]),
    ...(pilotOpening(p) === 0
      ? []
      : [
          {
            id: 'pilot',
            field: 'pilot',
            title: 'pilot opening',
            value: { amount: pilotOpening(p), unit: 'mm' as const },
            text: `${format.length(pilotOpening(p))} for a pilot of ${format.length(p.pilot.mm)}`,
          },
        ]),
  ];
}

/** The motor's body, pilot and circle at both ends of its travel, heads of all bolts. */
export function mountingPlateGhosts(_part: Part, p: MountingPlate, facts: Facts): readonly Ghost[] {
  const answer = resolvePlate(p);
  if (!answer.ok) return [];
  const { base, motor } = answer.value;
  const circleOf = (id: string, set: typeof base, centre: Point): readonly Ghost[] =>
    set?.circle === undefined
      ? []
      : [{ id, kind: 'bolt-circle', shape: { circle: { centre, radius: set.circle.diameter / 2 } } }];
  const heads = [
    ...[base, motor].flatMap((set) => (set === undefined ? [] : headGhosts(set.size, set.holes))),
    ...circleOf('circle', base, { x: 0, y: 0 }),
    ...circleOf('motor.circle', motor, motorMiddle(p)),
  ];
  if (motor === undefined) return heads;
  const middle = motorMiddle(p);
  const [from, to] = endsOf(middle, motorStretch(p));
  const round = (id: string, centre: typeof middle, diameter: number, label?: string): Ghost => ({
    id,
    kind: 'mating-part',
    ...(label === undefined ? {} : { label }),
    shape: { circle: { centre, radius: diameter / 2 } },
  });
  const slides = motor.stretch.kind === 'straight';
  const body = p.motorBody?.mm;
  return [
    ...heads,
    ...(p.pilot.mm === 0 ? [] : [round('motor.pilot', middle, p.pilot.mm, 'motor pilot')]),
    ...(body === undefined
      ? []
      : slides
        ? [
            round('motor.from', from, body),
            round('motor.to', to, body, `motor ⌀${facts.format.bare(body)}, both ends of its travel`),
          ]
        : [round('motor.body', middle, body, `motor ⌀${facts.format.bare(body)}`)]),
    ...(slides ? [lineGhost('motor.way', 'mating-part', from, to)] : []),
  ];
}

export function mountingPlateSteps(_part: Part, p: MountingPlate, facts: Facts): readonly ShopStep[] {
  const answer = resolvePlate(p);
  if (!answer.ok) return [];
  const { base, motor } = answer.value;
  const ids = (set: typeof base) => set?.holes.map(({ featureId }) => featureId) ?? [];
  const slotted = [base, motor].filter((set) => set !== undefined && set.stretch.kind !== 'none');
  return [
    DEBURR,
    {
      kind: 'measure',
      says: `Measure one hole, one slot and the longest hole distance${base === undefined || base.holes.length < 2 ? '' : ' over both diagonals'} before the plate leaves the table.`,
    },
    ...(base === undefined ? [] : holeSteps(base.size, ids(base), facts.format)),
    ...(slotted.length === 0
      ? []
      : [
          {
            kind: 'grind' as const,
            says: 'Grind the lead-in nubs out of the slots, and both faces flat where washers slide; a bolt must run from end to end by hand.',
            featureIds: slotted.flatMap(ids),
          },
        ]),
    ...(motor === undefined
      ? []
      : [
          {
            kind: 'fit' as const,
            says: `Offer the motor up with ${motor.holes.length} bolts loose${motor.stretch.kind === 'none' ? '' : ', slide it through its whole travel'}; the bolts’ ends must not bottom in its face.`,
            featureIds: ids(motor),
          },
          {
            kind: 'indicate' as const,
            says: `Line the sprockets up with a straight edge across their faces, ${motor.stretch.kind === 'none' ? 'then' : 'set the chain’s slack, then'} tighten crosswise.`,
          },
        ]),
    {
      kind: 'paint',
      says: 'Paint, but keep the faces under motor and washers bare: a painted joint creeps and goes loose.',
    },
  ];
}

export function mountingPlateHardware(_part: Part, p: MountingPlate, facts: Facts): readonly HardwareItem[] {
  const answer = resolvePlate(p);
  if (!answer.ok) return [];
  const { base, motor } = answer.value;
  const tapped = base?.size.made === 'tapped';
  return [
    ...(base === undefined
      ? []
      : boltItems(
          {
            id: 'base',
            bolt: p.bolt,
            count: base.holes.length,
            grip: tapped ? p.under.mm : p.under.mm + p.thickness.mm,
            ...(tapped ? { into: p.thickness.mm } : {}),
            overSlot: base.stretch.kind !== 'none',
          },
          facts.format,
        )),
    ...(motor === undefined
      ? []
      : boltItems(
          {
            id: 'motor',
            bolt: p.motorBolt,
            count: motor.holes.length,
            grip: p.thickness.mm,
            // One diameter of thread in the motor's face.
            into: motor.size.thread.diameter,
            overSlot: motor.stretch.kind !== 'none',
          },
          facts.format,
        )),
  ];
}
