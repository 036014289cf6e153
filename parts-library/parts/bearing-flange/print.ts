// Derived values, ghosts, steps and hardware of a bearing flange plate.
import type { Facts } from '../../checks/index.js';
import { hullContour } from '../../geometry/index.js';
import { boltEnvelope } from '../../handbook/index.js';
import type { Derived, Ghost, HardwareItem, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { boltItems, headGhosts } from '../shared/bolted.js';
import { holeSteps } from '../shared/holes.js';
import { lineGhost } from '../shared/mating.js';
import { DEBURR, edgeWeldSteps } from '../shared/weld-steps.js';
import { legOf } from './check.js';
import { clampRingRadius, type Holes } from './holes.js';
import type { BearingFlange } from './parameters.js';
import { resolveFlange, type ResolvedFlange } from './resolve.js';

const idsOf = (set: Holes | undefined): readonly string[] =>
  set?.holes.map(({ featureId }) => featureId) ?? [];

export function bearingFlangeDerived(
  _part: Part,
  p: BearingFlange,
  { format }: DrawContext,
): readonly Derived[] {
  const answer = resolveFlange(p);
  if (!answer.ok) return [];
  const { flange, seat, cut, foot, clamp } = answer.value;
  return [
    ...(flange === undefined
      ? []
      : [
          {
            id: 'circle',
            field: 'boltCircle',
            title: 'housing bolt circle',
            value: { amount: flange.circle.diameter, unit: 'mm' as const },
            text: `⌀${format.length(flange.circle.diameter)}; ${flange.holes.length} holes ⌀${format.length(flange.size.diameter)} for ${flange.size.thread.name}`,
          },
          {
            id: 'opening',
            field: 'collar',
            title: 'opening',
            value: { amount: cut, unit: 'mm' as const },
            text: `⌀${format.length(cut)} round a collar of ${format.length(p.collar.mm)}`,
          },
        ]),
    ...(seat === undefined
      ? []
      : [
          {
            id: 'seat',
            field: 'outside',
            title: 'seat',
            value: { amount: seat.most, unit: 'mm' as const },
            text: `cut ⌀${format.length(cut)}, bore to ${format.fine(seat.least)} … ${format.fine(seat.most)} (${seat.fit})`,
          },
        ]),
    ...(clamp === undefined
      ? []
      : [
          {
            id: 'clamp',
            field: 'clampBolt',
            title: 'clamp ring',
            value: { amount: clamp.circle, unit: 'mm' as const },
            text: `${clamp.holes.length} screws on ⌀${format.length(clamp.circle)}; inside of the ring 2 to 4 mm smaller than the bearing`,
          },
        ]),
    ...(foot === 0
      ? []
      : [
          {
            id: 'foot',
            field: 'width',
            title: 'foot',
            value: { amount: foot, unit: 'mm' as const },
            text: `${format.length(foot)} of straight edge to weld`,
          },
        ]),
  ];
}

/** A cast ear round each bolt, and the middle of the housing, as one belt. */
function housingGhost(p: BearingFlange, r: ResolvedFlange): readonly Ghost[] {
  const { flange } = r;
  if (flange === undefined) return [];
  const envelope = boltEnvelope(flange.size.thread);
  const ear = envelope.found ? 0.7 * envelope.row.washerOutside.value : 1.3 * flange.size.thread.diameter;
  const middle = { centre: r.shaft, radius: Math.max(p.collar.mm, p.shaft.mm) * 0.75 };
  const contour = hullContour(
    [middle, ...flange.holes.map(({ at }) => ({ centre: at, radius: ear }))],
    'outline',
  );
  return [
    { id: 'housing', kind: 'mating-part', label: 'bearing housing', shape: { contour } },
    {
      id: 'collar',
      kind: 'hub',
      label: 'collar',
      shape: { circle: { centre: r.shaft, radius: p.collar.mm / 2 } },
    },
    {
      id: 'circle',
      kind: 'bolt-circle',
      shape: { circle: { centre: r.shaft, radius: flange.circle.diameter / 2 } },
    },
  ];
}

export function bearingFlangeGhosts(part: Part, p: BearingFlange, facts: Facts): readonly Ghost[] {
  const answer = resolveFlange(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const round = (id: string, kind: Ghost['kind'], diameter: number, label?: string): Ghost => ({
    id,
    kind,
    ...(label === undefined ? {} : { label }),
    shape: { circle: { centre: r.shaft, radius: diameter / 2 } },
  });
  const low = -p.height.mm / 2;
  const leg = r.foot > 0 ? legOf(p, facts.format.unit) : 0;
  return [
    ...housingGhost(p, r),
    ...(r.seat === undefined ? [] : [round('bearing', 'mating-part', p.outside.mm, 'bearing')]),
    ...(r.clamp === undefined
      ? []
      : [
          round('clamp.circle', 'bolt-circle', r.clamp.circle),
          round('clamp.ring', 'mating-part', 2 * clampRingRadius(r.clamp), 'clamp ring'),
        ]),
    round('shaft', 'hub', p.shaft.mm, `shaft ⌀${facts.format.bare(p.shaft.mm)}`),
    ...[r.flange, r.clamp, r.mount].flatMap((set) =>
      set === undefined ? [] : headGhosts(set.size, set.holes),
    ),
    ...(r.foot === 0
      ? []
      : [lineGhost('weld', 'weld', { x: -r.foot / 2, y: low + leg }, { x: r.foot / 2, y: low + leg })]),
  ];
}

export function bearingFlangeSteps(_part: Part, p: BearingFlange, facts: Facts): readonly ShopStep[] {
  const answer = resolveFlange(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { length, fine } = facts.format;
  const drilled = [r.flange, r.clamp, r.mount].flatMap((set) =>
    set === undefined ? [] : holeSteps(set.size, idsOf(set), facts.format),
  );
  const bored: readonly ShopStep[] =
    r.seat === undefined
      ? []
      : [
          {
            kind: 'bore',
            says: `Bore the seat from ⌀${length(r.cut)} to ${fine(r.seat.least)} … ${fine(r.seat.most)} (${r.seat.fit}), measured against the bearing at hand; chamfer 1 × 30° where it goes in.`,
            featureIds: ['opening'],
          },
        ];
  const welded =
    r.foot === 0
      ? []
      : edgeWeldSteps(
          {
            leg: legOf(p, facts.format.unit),
            sides: 'both',
            to: 'the frame',
            fit: 'Stand the plate square on the frame with the shaft through both bearings.',
          },
          facts.format,
        );
  // A weld pulls a finished bore out of round.
  const before = r.foot > 0 && r.seat !== undefined;
  return [
    DEBURR,
    {
      kind: 'measure',
      says: 'Measure the opening and two neighbouring bolt holes before the plate leaves the table.',
    },
    ...drilled,
    ...(before ? [...welded, ...bored] : [...bored, ...welded]),
    {
      kind: 'grind',
      says:
        r.seat === undefined
          ? 'Grind the face under the housing flat, nubs and dross gone: a cast flange cracks when it is pulled onto a high spot.'
          : 'Dress both faces flat beside the seat.',
    },
    {
      kind: 'fit',
      says:
        r.seat === undefined
          ? 'Bolt the housing finger-tight, pass the shaft through both bearings, tighten crosswise while it is turned by hand.'
          : `${p.seatFit === 'N7' ? 'Press the bearing in by its outer ring alone' : 'Slide the bearing in with retaining compound, by its outer ring alone'}; the shaft must turn freely after.`,
    },
    {
      kind: 'indicate',
      says: 'Line up the two bearings with the shaft itself before the mounting is made final; lock the collar last.',
    },
  ];
}

export function bearingFlangeHardware(_part: Part, p: BearingFlange, facts: Facts): readonly HardwareItem[] {
  const answer = resolveFlange(p);
  if (!answer.ok) return [];
  const { flange, clamp, mount, seat } = answer.value;
  const { format } = facts;
  const t = p.thickness.mm;
  const into = (set: Holes) => (set.size.made === 'tapped' ? { into: t } : {});
  return [
    seat === undefined
      ? {
          id: 'bearing',
          kind: 'bearing',
          name: `flanged bearing housing, ${p.flangeBolts} bolts, shaft ${format.length(p.shaft.mm)}`,
          quantity: 1,
          says: 'Grease nipple where it can be reached.',
        }
      : {
          id: 'bearing',
          kind: 'bearing',
          name: `deep groove ball bearing ${format.bare(p.shaft.mm)} × ${format.bare(p.outside.mm)} × ${format.bare(p.bearingWidth.mm)}, sealed`,
          quantity: 1,
          says:
            p.seatFit === 'N7'
              ? 'With more than normal play (C3): a pressed ring eats some of it.'
              : 'Normal play.',
        },
    ...(flange === undefined
      ? []
      : boltItems(
          {
            id: 'flange',
            bolt: p.bolt,
            count: flange.holes.length,
            grip: p.housingFlange.mm + (flange.size.made === 'tapped' ? 0 : t),
            ...into(flange),
          },
          format,
        )),
    ...(clamp === undefined
      ? []
      : boltItems(
          {
            id: 'clamp',
            bolt: p.clampBolt,
            count: clamp.holes.length,
            // A ring as thick as what stands of the bearing, at least 3 mm.
            grip: Math.max(3, p.bearingWidth.mm - t) + (clamp.size.made === 'tapped' ? 0 : t),
            ...into(clamp),
          },
          format,
        )),
    ...(mount === undefined
      ? []
      : boltItems(
          {
            id: 'mount',
            bolt: p.mountBolt,
            count: 4,
            grip: p.under.mm + (mount.size.made === 'tapped' ? 0 : t),
            ...into(mount),
          },
          format,
        )),
  ];
}
