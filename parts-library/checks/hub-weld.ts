// The fillet between hub and plate: its leg for this thickness, and its stress under torque and chain pull.
import {
  allowableWeldShear,
  e70Megapascals,
  hubWeldStress,
  largestFilletLeg,
  leastFilletLeg,
  strengthAt,
  throatOverLeg,
  type Material,
  type Source,
} from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { Facts } from './facts.js';
import { digits, found, judge, percent, quantity } from './findings.js';

export interface HubWeldInput {
  /** Hub outside, mm. */
  readonly hub: number;
  readonly leg: number;
  readonly sides: 'one' | 'both';
  readonly thickness: number;
  readonly material: Material;
}

export interface HubLoad {
  readonly newtonMetres: number;
  readonly pullNewtons: number;
  /** From the middle of the chain to the weld, mm; undefined when not measured. */
  readonly offset?: number | undefined;
}

/** Share of the allowable stress that is still comfortable where shock and fatigue are left out. */
const COMFORTABLE = 0.5;

const FILLER: Source = {
  title: 'What welds to what',
  where:
    'steel is not fusion-welded to aluminium; stainless wants its own filler and its fume holds chromium(VI)',
  certainty: 'common practice',
};

/** Whether hub and plate can be welded at all, before any strength is counted. */
export function checkWeldability(material: Material): readonly Finding[] {
  const place = {
    code: 'weldability',
    field: 'material',
    subject: { featureId: 'centre' },
    source: FILLER,
  } as const;
  if (material.family === 'aluminium') {
    return [
      found({
        ...place,
        level: 'stop',
        title: `A steel hub does not weld to ${material.name}`,
        says: 'Bolt the hub on through a flange, or use an aluminium hub with a welder who knows it: the weld takes away most of the temper, and none of the strengths here count then.',
      }),
    ];
  }
  if (material.family === 'stainless steel') {
    return [
      found({
        ...place,
        level: 'caution',
        title: `Stainless ${material.name} to a carbon-steel hub: filler and fume`,
        says: 'It wants a filler for dissimilar steels, and the strengths here are for 490 MPa carbon-steel weld metal. Fume of stainless holds chromium(VI): extraction and breathing protection as your code says.',
      }),
    ];
  }
  return [];
}

export function checkFilletLeg(input: HubWeldInput, facts: Facts): readonly Finding[] {
  const least = leastFilletLeg(input.thickness, facts.format.unit);
  const most = largestFilletLeg(input.thickness);
  const level = judge(
    ['caution', input.leg < least.leg - 1e-9],
    ['note', input.leg > input.thickness + 1e-9],
  );
  return [
    found({
      code: 'fillet-leg',
      level,
      subject: { featureId: 'centre' },
      anchor: { x: 0, y: -input.hub / 2 },
      field: 'weldLeg',
      title: `Fillet leg ${facts.format.length(input.leg)}, at least ${facts.format.length(least.leg)} for ${facts.format.length(input.thickness)} plate`,
      says:
        level === 'note'
          ? `A leg larger than the plate is thick brings heat and little strength; along an edge at most ${facts.format.length(most.leg)}.`
          : level === 'caution'
            ? 'A smaller bead chills on the plate and cracks.'
            : 'By the thinner part joined; the hub is taken to be the thicker one.',
      value: quantity(input.leg, 'mm'),
      limit: quantity(least.leg, 'mm'),
      source: least.source,
      ...(level === 'caution'
        ? {
            remedies: [
              {
                says: `Weld a ${facts.format.length(least.leg)} leg`,
                change: [{ op: 'add' as const, path: '/weldLeg', value: least.leg }],
              },
            ],
          }
        : {}),
    }),
  ];
}

/**
 * Throat stress from torque, direct shear and the bending of an offset pull, against 0.30 FEXX of 490 MPa weld metal
 * and 0.40 of the plate's yield on the leg. Fatigue and the weld's starts are not covered, and it says so.
 */
export function checkHubWeld(
  input: HubWeldInput,
  load: HubLoad | undefined,
  facts: Facts,
): readonly Finding[] {
  if (load === undefined) return [];
  const strength = strengthAt(input.material, input.thickness);
  if (strength === undefined) return [];
  const stress = hubWeldStress({
    radius: input.hub / 2,
    leg: input.leg,
    sides: input.sides === 'both' ? 2 : 1,
    newtonMetres: load.newtonMetres,
    shearNewtons: load.pullNewtons,
    bendingNewtonMetres: (load.pullNewtons * (load.offset ?? 0)) / 1000,
  });
  const weldLimit = allowableWeldShear(e70Megapascals);
  // The leg carries the same force on 1/0.707 of the throat's width; plate shear allowed is 0.40 of yield.
  const plateLimit = (0.4 * strength.yieldMegapascals) / throatOverLeg;
  const limit = Math.min(weldLimit, plateLimit);
  const share = stress.combined / limit;
  const sides = input.sides === 'both' ? 'both sides' : 'one side';
  const pull = load.pullNewtons > 0;
  return [
    found({
      code: 'hub-weld',
      level: judge(
        ['stop', share > 1],
        ['caution', share > COMFORTABLE],
        ['note', pull && load.offset === undefined],
      ),
      subject: { featureId: 'centre' },
      anchor: { x: 0, y: -input.hub / 2 - input.leg / 2 },
      field: 'weldLeg',
      title: `Fillet ${facts.format.length(input.leg)} ${sides}, ${percent(share)} used at ${facts.format.torque(load.newtonMetres)}`,
      says: `Torsion ${facts.format.stress(stress.torsion)}, direct shear ${facts.format.stress(stress.shear)}, bending ${facts.format.stress(stress.bending)}. Static: fatigue, starts and craters are not covered. ${pull && load.offset === undefined ? 'The chain’s offset from the weld is not given, so bending is left out: measure it. ' : ''}${share > COMFORTABLE ? 'A larger leg, welding both sides, or a larger hub would do.' : ''}`.trim(),
      value: quantity(stress.combined, 'MPa'),
      limit: quantity(limit, 'MPa'),
      formula: `τ = T/(2πr²·0.707h·n) = ${digits(load.newtonMetres * 1000, 0)}/(2π·${digits(input.hub / 2)}²·0.707·${digits(input.leg)}·${input.sides === 'both' ? 2 : 1}) = ${digits(stress.torsion)}; √((${digits(stress.torsion)} + ${digits(stress.shear)})² + ${digits(stress.bending)}²) = ${digits(stress.combined)}; limit min(0.30 × 483, 0.40 × ${strength.yieldMegapascals} ÷ 0.707) = ${digits(limit)}`,
      source: stress.source,
    }),
  ];
}
