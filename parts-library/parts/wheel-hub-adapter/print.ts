// Derived values, ghosts and steps of a wheel-hub adapter.
import type { Facts } from '../../checks/index.js';
import { boltEnvelope } from '../../handbook/index.js';
import type { Derived, Ghost, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { blankSteps, fitText, machinedHoleSteps, provingSteps } from '../shared/machined-words.js';
import { patternDerived } from '../shared/pattern-derived.js';
import { patternGhosts } from '../shared/pattern-ghosts.js';
import { arcGhost, ringGhost, roomGhosts } from '../shared/wheel-ghosts.js';
import { studText } from './orders.js';
import type { WheelHubAdapter } from './parameters.js';
import { resolveHubAdapter, RIM_AT, shownRim } from './resolve.js';

export function wheelHubAdapterDerived(
  _part: Part,
  p: WheelHubAdapter,
  context: DrawContext,
): readonly Derived[] {
  const answer = resolveHubAdapter(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { length } = context.format;
  return [
    patternDerived(r.hub, context, 'hub’s bolt circle'),
    patternDerived(r.wheel, context, 'wheel’s bolt circle'),
    {
      id: 'centre',
      field: 'hubPilot',
      title: 'centre',
      value: { amount: r.drawn, unit: 'mm' },
      text: `cut ⌀${length(r.drawn)}, turned to ${fitText(p.hubPilot.mm, p.pilotFit, context.format)}`,
    },
    {
      id: 'flange',
      field: 'thickness',
      title: 'hub seat to wheel seat',
      value: { amount: r.flange, unit: 'mm' },
      text: `${length(r.flange)}; the track grows ${length(2 * r.flange)}`,
    },
    {
      id: 'nut-grip',
      field: 'studLength',
      title: 'stud in the wheel nut',
      value: { amount: r.nutGrip, unit: 'mm' },
      text: `${length(r.nutGrip)}, ${Number((r.nutGrip / r.wheel.pattern.thread.pitch).toFixed(1))} turns`,
    },
  ];
}

export function wheelHubAdapterGhosts(_part: Part, p: WheelHubAdapter, facts: Facts): readonly Ghost[] {
  const answer = resolveHubAdapter(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const bare = facts.format.bare;
  const envelope = boltEnvelope(r.wheel.pattern.thread);
  return [
    ...patternGhosts([r.hub]),
    {
      id: 'pattern2.circle',
      kind: 'bolt-circle',
      shape: { circle: { centre: { x: 0, y: 0 }, radius: r.wheel.pattern.circle / 2 } },
    },
    ...r.wheel.pattern.holes.flatMap(({ featureId, at }): readonly Ghost[] => [
      {
        id: `${featureId}.thread`,
        kind: 'thread',
        shape: { circle: { centre: at, radius: r.wheel.pattern.thread.diameter / 2 } },
      },
      ...(envelope.found
        ? [
            {
              id: `${featureId}.nut`,
              kind: 'bolt-head' as const,
              shape: { circle: { centre: at, radius: envelope.row.acrossCorners.value / 2 } },
            },
          ]
        : []),
    ]),
    ...ringGhost('hub.pilot', 'hub', p.hubPilot.mm / 2, `hub pilot ⌀${bare(p.hubPilot.mm)}`),
    ...ringGhost('wheel.bore', 'mating-part', p.pattern2.boltedBore.mm / 2, 'wheel bore'),
    ...ringGhost(
      'hub.flange',
      'hub',
      p.hubFlange === undefined ? undefined : p.hubFlange.mm / 2,
      'hub flange',
    ),
    ...ringGhost(
      'wheel.pad',
      'mating-part',
      p.wheelPad === undefined ? undefined : p.wheelPad.mm / 2,
      'wheel’s mounting face',
    ),
    ...arcGhost('wheel.rim', shownRim(p, r), 'wheel’s rim', RIM_AT),
    ...roomGhosts(p),
  ];
}

export function wheelHubAdapterSteps(_part: Part, p: WheelHubAdapter, facts: Facts): readonly ShopStep[] {
  const answer = resolveHubAdapter(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { format } = facts;
  const { length } = format;
  const hubHoles = r.hub.pattern.holes.map(({ featureId }) => featureId);
  const studHoles = r.wheel.pattern.holes.map(({ featureId }) => featureId);
  return [
    ...blankSteps(),
    {
      kind: 'bore',
      says: `Chuck by the outside, face the wheel’s side, and in the same setting bore the centre from ⌀${length(r.drawn)} to ${fitText(p.hubPilot.mm, p.pilotFit, format)}${p.wheelPilot === 'spigot' ? ` and turn the spigot to ${fitText(p.pattern2.boltedBore.mm, p.spigotFit, format)}, ${length(p.spigot.mm)} high, its corner relieved so that the wheel seats` : ''}.`,
      featureIds: ['centre'],
    },
    {
      kind: 'bore',
      says: `On an arbor in the bore, face the hub’s side: seats ${length(r.flange)} apart, flat and parallel within ${format.fine(p.flatness.mm)}.`,
    },
    ...machinedHoleSteps(r.hub.size, r.hub.pattern, format),
    ...(p.sink.mm > 0 || r.cone > 0
      ? [
          {
            kind: 'countersink' as const,
            says: `From the wheel’s side ${p.sink.mm > 0 ? `counterbore ${hubHoles.length} holes ${length(p.sink.mm)} deep for nut, washer and socket` : ''}${p.sink.mm > 0 && r.cone > 0 ? ', then ' : ''}${r.cone > 0 ? `countersink them 60°, ${length(r.cone)} deep, until the nut’s cone bears` : ''}.`,
            featureIds: hubHoles,
          },
        ]
      : []),
    ...(p.studs === 'threaded'
      ? machinedHoleSteps(r.wheel.size, r.wheel.pattern, format)
      : [
          {
            kind: 'drill' as const,
            says: `Drill ${studHoles.length} holes 0.3 mm under size on ⌀${length(r.wheel.pattern.circle)} from the turned bore, on a dividing head or by coordinates.`,
            featureIds: studHoles,
          },
          {
            kind: 'ream' as const,
            says: `Ream them to ⌀${length(r.wheel.size.diameter)}, chamfer the hub’s side.`,
            featureIds: studHoles,
          },
        ]),
    {
      kind: 'fit',
      says: `${studText(p, r, format)}: ${p.studs === 'pressed' ? 'pull them home square, one by one; each head seats all round' : 'screw them home with locking compound and stake or pin them from the hub’s side'}.`,
    },
    ...provingSteps('the rim', format.fine(p.runout.mm)),
  ];
}
