// The chain beside the plate: room under its side plates, and its pull against its strength.
import {
  maxHubDiameter,
  pitchDiameter,
  plateClearance,
  serviceLoad,
  sidePlateCircle,
  sourceOf,
  weakestSource,
  type Chain,
  type Source,
} from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import { STANDARD_GRAVITY } from '../units/index.js';
import type { Facts } from './facts.js';
import { digits, found, judge, percent, quantity } from './findings.js';

export interface PullInput {
  readonly chain: Chain;
  readonly teeth: number;
  /** Greatest torque at this sprocket, N·m. */
  readonly torque?: number | undefined;
  /** What the driven wheels carry, kg; loaded tyre diameter, mm; friction. */
  readonly gripMass?: number | undefined;
  readonly tyreDiameter?: number | undefined;
  readonly grip: number;
}

export interface ChainPull {
  readonly newtons: number;
  readonly newtonMetres: number;
  readonly from: 'torque' | 'tyre grip';
}

/** Tyre grip as a torque on the wheel's axle: μ m g r, N·m. */
export function gripTorque(mass: number, tyreDiameter: number, grip: number): number {
  return (grip * mass * STANDARD_GRAVITY * tyreDiameter) / 2000;
}

/**
 * Chain pull F = 2 T / PD from the worse of torque and tyre grip.
 *
 * @returns undefined when neither is known
 */
export function chainPull(input: PullInput): ChainPull | undefined {
  const torques = [
    ...(input.torque === undefined ? [] : [{ newtonMetres: input.torque, from: 'torque' as const }]),
    ...(input.gripMass === undefined || input.tyreDiameter === undefined
      ? []
      : [
          {
            newtonMetres: gripTorque(input.gripMass, input.tyreDiameter, input.grip),
            from: 'tyre grip' as const,
          },
        ]),
  ];
  const worst = torques.toSorted((a, b) => b.newtonMetres - a.newtonMetres)[0];
  if (worst === undefined) return undefined;
  return { ...worst, newtons: (2000 * worst.newtonMetres) / pitchDiameter(input.chain.pitch, input.teeth) };
}

const ROOM_SOURCE: Source = {
  title: 'ASME B29.1 maximum hub diameter',
  where: 'MHD = P (cot(180°/N) − 1) − 0.76 mm; Machinery’s Handbook 31st ed. p. 2631',
  certainty: 'published',
};

/** Plate outside and bolt heads against the circle that the chain's side plates keep to. */
export function checkChainRoom(
  input: {
    readonly chain: Chain;
    readonly teeth: number;
    /** Greatest distance from the middle to the plate's edge, or to what else stands beside the sprocket, mm. */
    readonly reach?: number | undefined;
    /** What that is, and the parameter that sets it; the plate's outside when left out. */
    readonly what?: string;
    readonly field?: string;
    /** Greatest distance from the middle to the outside of a bolt head or washer, mm. */
    readonly headReach?: number | undefined;
    /** What would make room, as a sentence. */
    readonly remedy?: string;
  },
  facts: Facts,
): readonly Finding[] {
  const limit = maxHubDiameter(input.chain.pitch, input.teeth);
  const circle =
    input.chain.plateHeight === undefined ? undefined : sidePlateCircle(input.chain, input.teeth);
  const rows = [
    ...(input.reach === undefined
      ? []
      : [
          {
            code: 'chain-room',
            what: input.what ?? 'Plate outside',
            reach: input.reach,
            field: input.field ?? 'outside',
          },
        ]),
    ...(input.headReach === undefined
      ? []
      : [{ code: 'chain-room-heads', what: 'Bolt heads', reach: input.headReach, field: 'boltCircle' }]),
  ];
  return rows.map(({ code, what, reach, field }) => {
    const diameter = reach * 2;
    const level = judge(['stop', diameter > (circle ?? limit)], ['caution', diameter > limit]);
    return found({
      code,
      level,
      anchor: { x: reach, y: 0 },
      field,
      title: `${what} ⌀${facts.format.length(diameter)} ${level === 'pass' ? 'inside' : 'outside'} the largest hub ⌀${facts.format.length(limit)}`,
      says:
        level === 'pass'
          ? `${facts.format.length((limit - diameter) / 2)} to spare under the chain on each side.`
          : `The side plates of the ${input.chain.name} chain on ${input.teeth} teeth come down to ⌀${facts.format.length(circle ?? limit)}${circle === undefined ? ' at most (plate height not known)' : ''}; anything beside the sprocket must stay inside the largest hub. ${input.remedy ?? 'A smaller outside, a lobed outside, or a spacer beside the sprocket would do.'}`,
      value: quantity(diameter, 'mm'),
      ...(level === 'stop' && circle !== undefined
        ? {
            limit: quantity(circle, 'mm'),
            formula: `side plates ${digits(input.chain.pitch, 3)} cot(180°/${input.teeth}) − ${digits(input.chain.plateHeight ?? 0)} = ${digits(circle)}`,
            source: weakestSource(plateClearance, sourceOf(input.chain, 'plateHeight')),
          }
        : {
            limit: quantity(limit, 'mm'),
            formula: `${digits(input.chain.pitch, 3)} (cot(180°/${input.teeth}) − 1) − 0.76 = ${digits(limit)}`,
            source: ROOM_SOURCE,
          }),
    });
  });
}

/** Pull against one sixth of the chain's strength; unknown where no source gives the strength. */
export function checkChainPull(input: PullInput, facts: Facts): readonly Finding[] {
  const pull = chainPull(input);
  const load = serviceLoad(input.chain);
  const unknown = (says: string, field: string): readonly Finding[] => [
    found({
      code: 'chain-pull',
      level: 'note',
      field,
      title: `Pull against strength of ${input.chain.name}: unknown`,
      says,
      source: load?.source ?? input.chain.source,
    }),
  ];
  if (pull === undefined) {
    return unknown(
      'Give the greatest torque at this sprocket, or the mass on the driven wheels with the tyre diameter.',
      'torque',
    );
  }
  if (load === undefined) {
    return unknown(
      `The pull is ${facts.format.force(pull.newtons)} from ${pull.from}, but no source held here gives the tensile strength of ${input.chain.name} chain; take it from the maker and keep the pull under one sixth of it.`,
      'chain',
    );
  }
  const level = judge(['stop', pull.newtons > load.neverNewtons], ['caution', pull.newtons > load.newtons]);
  return [
    found({
      code: 'chain-pull',
      level,
      field: 'chain',
      title: `Chain pull ${facts.format.force(pull.newtons)}, ${percent(pull.newtons / load.newtons)} of the working load`,
      says:
        level === 'pass'
          ? `From ${pull.from}: ${facts.format.torque(pull.newtonMetres)} at this sprocket.`
          : `From ${pull.from}: ${facts.format.torque(pull.newtonMetres)} at this sprocket. The working load is one sixth of the minimum tensile strength; above one half the chain must not be pulled even once. A larger sprocket or a heavier chain would do.`,
      value: quantity(pull.newtons, 'N'),
      limit: quantity(load.newtons, 'N'),
      formula: `F = 2 T / PD = 2 × ${digits(pull.newtonMetres)} N·m ÷ ${digits(pitchDiameter(input.chain.pitch, input.teeth) / 1000, 5)} m; limit ${digits(load.newtons * 6, 0)} N ÷ 6`,
      source: weakestSource(load.source, load.strengthSource),
    }),
  ];
}
