// Derived values, ghosts, steps and hardware of a disc carrier.
import type { Facts } from '../../checks/index.js';
import type { Derived, Ghost, HardwareItem, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { boltItems } from '../shared/bolted.js';
import { blankSteps, fitText, machinedHoleSteps, provingSteps } from '../shared/machined-words.js';
import { patternDerived } from '../shared/pattern-derived.js';
import { patternGhosts } from '../shared/pattern-ghosts.js';
import { ringGhost, roomGhosts } from '../shared/wheel-ghosts.js';
import type { DiscCarrier } from './parameters.js';
import { resolveCarrier } from './resolve.js';

export function discCarrierDerived(_part: Part, p: DiscCarrier, context: DrawContext): readonly Derived[] {
  const answer = resolveCarrier(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { length } = context.format;
  return [
    patternDerived(r.disc, context, 'disc’s bolt circle'),
    patternDerived(r.hub, context, 'hub’s bolt circle'),
    {
      id: 'centre',
      field: 'hubPilot',
      title: 'centre',
      value: { amount: r.drawn, unit: 'mm' },
      text: `cut ⌀${length(r.drawn)}, turned to ${fitText(p.hubPilot.mm, p.pilotFit, context.format)}`,
    },
    {
      id: 'finished',
      field: 'thickness',
      title: 'faced thickness',
      value: { amount: r.finished, unit: 'mm' },
      text: `${length(r.finished)}; ${length(r.lobe)} under the disc’s bolts`,
    },
    {
      id: 'offset',
      field: 'offset',
      title: 'hub face to disc seat',
      value: { amount: r.offset, unit: 'mm' },
      text: `${length(r.offset)}; seat turned ${length(r.depth)} deep into the ${p.discSide === 'far' ? 'far' : 'hub’s'} face`,
    },
  ];
}

export function discCarrierGhosts(_part: Part, p: DiscCarrier, facts: Facts): readonly Ghost[] {
  const answer = resolveCarrier(p);
  if (!answer.ok) return [];
  const bare = facts.format.bare;
  return [
    ...patternGhosts([answer.value.disc, answer.value.hub]),
    ...ringGhost('hub.pilot', 'hub', p.hubPilot.mm / 2, `hub pilot ⌀${bare(p.hubPilot.mm)}`),
    ...ringGhost('disc.bore', 'mating-part', p.boltedBore.mm / 2, 'disc bore'),
    ...ringGhost('disc.outside', 'mating-part', p.disc.mm / 2, 'disc'),
    ...roomGhosts(p),
  ];
}

export function discCarrierSteps(_part: Part, p: DiscCarrier, facts: Facts): readonly ShopStep[] {
  const answer = resolveCarrier(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { format } = facts;
  const { length } = format;
  const side = p.discSide === 'far' ? 'far face' : 'hub’s face';
  return [
    ...blankSteps(),
    {
      kind: 'bore',
      says: `Chuck by the outside, face the hub’s side ${length(p.faceAllowance.mm)}, and in the same setting bore the centre from ⌀${length(r.drawn)} to ${fitText(p.hubPilot.mm, p.pilotFit, format)}.`,
      featureIds: ['centre'],
    },
    {
      kind: 'bore',
      says: `On an arbor in the bore, face the other side to ${length(r.finished)}, flat and parallel within ${format.fine(p.flatness.mm)}.`,
    },
    ...(r.depth > 0
      ? [
          {
            kind: 'bore' as const,
            says: `On the same arbor turn the disc’s seat ${length(r.depth)} deep into the ${side}${p.discPilot === 'turned' ? `, to a pilot of ${fitText(p.boltedBore.mm, p.shoulderFit, format)}; relieve the corner so that the disc seats` : ''}.`,
          },
        ]
      : []),
    ...[r.disc, r.hub].flatMap(({ pattern, size }) => machinedHoleSteps(size, pattern, format)),
    ...provingSteps('the disc’s rim', format.fine(p.runout.mm)),
  ];
}

/** Bolts of both patterns: through, or into the thread that one side has. */
export function discCarrierHardware(_part: Part, p: DiscCarrier, facts: Facts): readonly HardwareItem[] {
  const answer = resolveCarrier(p);
  if (!answer.ok) return [];
  const { disc, hub, lobe, finished } = answer.value;
  const flange = p.hubFlange?.mm ?? hub.pattern.thread.diameter;
  const disced = p.discThickness.mm;
  const common = { grade: p.boltGrade } as const;
  const discBolts = { id: 'disc', bolt: disc.pattern.thread.name, count: disc.pattern.count, ...common };
  const hubBolts = { id: 'hub', bolt: hub.pattern.thread.name, count: hub.pattern.count, ...common };
  const into = (tapped: boolean, grip: number, thread: number) =>
    tapped ? { grip, into: thread } : { grip: grip + thread };
  return [
    ...boltItems(
      {
        ...discBolts,
        ...(disc.pattern.made === 'tapped'
          ? { grip: disced, into: lobe }
          : into(disc.pattern.boltedBy === 'thread', lobe, disced)),
      },
      facts.format,
    ),
    ...(hub.pattern.boltedBy === 'stud'
      ? boltItems({ ...hubBolts, grip: finished }, facts.format).filter(({ kind }) => kind === 'nut')
      : boltItems(
          {
            ...hubBolts,
            ...(hub.pattern.made === 'tapped'
              ? { grip: flange, into: finished }
              : into(hub.pattern.boltedBy === 'thread', finished, flange)),
          },
          facts.format,
        )),
  ];
}
