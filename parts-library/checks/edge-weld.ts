// The fillets along a plate's edge: leg, length, and what they carry of a pull on the plate.
import {
  e70Megapascals,
  filletStrength,
  largestFilletLeg,
  leastFilletLeg,
  leastFilletLength,
  strengthAt,
  throatOverLeg,
  weakestSource,
  weldLine,
  type Material,
} from '../handbook/index.js';
import type { Point } from '../geometry/index.js';
import type { Finding } from '../model/index.js';
import type { Facts } from './facts.js';
import { digits, found, judge, percent, quantity } from './findings.js';

export interface EdgeWeld {
  readonly leg: number;
  readonly sides: 'one' | 'both';
  /** Length of the edge that is welded, mm. */
  readonly length: number;
  /** Plate, and the thinner of plate and what it is welded to, mm. */
  readonly thickness: number;
  readonly thinner: number;
  readonly material: Material;
  readonly anchor: Point;
  /** Parameters that a person would change. */
  readonly fields: { readonly leg: string; readonly length: string; readonly sides: string };
}

/** What the weld is asked to hold, about the middle of the edge. */
export interface EdgeWeldLoad {
  /** N, in the plane of the plate: square to the edge, and along it. */
  readonly away: number;
  readonly along: number;
  /** N·mm in the plane of the plate, and about the edge itself. */
  readonly moment: number;
  readonly folding?: number;
}

/** Share of strength that is still comfortable for a static check that leaves shock and fatigue out. */
const COMFORTABLE = 0.5;

/** Leg by the thinner part, and the least length of a fillet. */
export function checkEdgeFillet(weld: EdgeWeld, facts: Facts): readonly Finding[] {
  const { length } = facts.format;
  const least = leastFilletLeg(weld.thinner, facts.format.unit);
  const most = largestFilletLeg(weld.thickness);
  const leastLength = leastFilletLength(weld.leg);
  const legLevel = judge(
    ['caution', weld.leg < least.leg - 1e-9],
    ['note', weld.leg > weld.thinner + 1e-9 && weld.leg > least.leg + 1e-9],
  );
  return [
    found({
      code: 'fillet-leg',
      level: legLevel,
      subject: { featureId: 'outline' },
      anchor: weld.anchor,
      field: weld.fields.leg,
      title: `Fillet leg ${length(weld.leg)}, at least ${length(least.leg)} for ${length(weld.thinner)}`,
      says:
        legLevel === 'note'
          ? `A leg larger than the thinner part brings heat and little strength, and burns through a thin wall; along an edge at most ${length(most.leg)}.`
          : legLevel === 'caution'
            ? 'A smaller bead chills and cracks.'
            : 'By the thinner part joined, single pass.',
      value: quantity(weld.leg, 'mm'),
      limit: quantity(least.leg, 'mm'),
      source: least.source,
      ...(legLevel === 'caution'
        ? {
            remedies: [
              {
                says: `Weld a ${length(least.leg)} leg`,
                change: [{ op: 'add' as const, path: `/${weld.fields.leg}`, value: least.leg }],
              },
            ],
          }
        : {}),
    }),
    found({
      code: 'weld-length',
      level: judge(['caution', weld.length < leastLength.leg - 1e-9]),
      subject: { featureId: 'outline' },
      anchor: weld.anchor,
      field: weld.fields.length,
      title: `Fillet ${length(weld.length)} long, at least ${length(leastLength.leg)}`,
      says: 'Four legs at least; a shorter bead is all start and crater.',
      value: quantity(weld.length, 'mm'),
      limit: quantity(leastLength.leg, 'mm'),
      formula: `4 × ${digits(weld.leg)} = ${digits(leastLength.leg)}`,
      source: leastLength.source,
    }),
  ];
}

/** Worst millimetre of the fillets against 0.60 FEXX ÷ 2 on the throat and 0.40 of the plate's yield on the leg. */
export function checkEdgeWeld(
  weld: EdgeWeld,
  load: EdgeWeldLoad | undefined,
  facts: Facts,
): readonly Finding[] {
  const strength = strengthAt(weld.material, weld.thickness);
  if (load === undefined || strength === undefined) return [];
  const line = weldLine({
    length: weld.length,
    sides: weld.sides === 'both' ? 2 : 1,
    away: load.away,
    along: load.along,
    moment: load.moment,
    ...(load.folding === undefined ? {} : { folding: load.folding }),
    apart: weld.thickness,
  });
  const place = {
    code: 'edge-weld',
    subject: { featureId: 'outline' },
    anchor: weld.anchor,
  } as const;
  if (!Number.isFinite(line.combined)) {
    return [
      found({
        ...place,
        level: 'stop',
        field: weld.fields.sides,
        title: 'Welded on one side it hinges on the bead',
        says: 'The pull folds the plate over, and one fillet has nothing to hold against. Weld both sides.',
        source: line.source,
        remedies: [
          {
            says: 'Weld both sides',
            change: [{ op: 'add', path: `/${weld.fields.sides}`, value: 'both' }],
          },
        ],
      }),
    ];
  }
  const fillet = filletStrength(weld.leg, e70Megapascals);
  const plate = 0.4 * strength.yieldMegapascals * weld.leg;
  const limit = Math.min(fillet.allowable, plate);
  const share = line.combined / limit;
  const sides = weld.sides === 'both' ? 2 : 1;
  const parts = [
    `pull ${digits(Math.abs(load.away), 0)}/(${sides}·${digits(weld.length)}) = ${digits(line.pull)}`,
    ...(line.bending > 0
      ? [
          `bending 6·${digits(Math.abs(load.moment), 0)}/(${sides}·${digits(weld.length)}²) = ${digits(line.bending)}`,
        ]
      : []),
    ...(line.folding > 0
      ? [
          `folding ${digits(Math.abs(load.folding ?? 0), 0)}/(${digits(weld.length)}·${digits(weld.thickness)}) = ${digits(line.folding)}`,
        ]
      : []),
    ...(line.shear > 0 ? [`shear ${digits(line.shear)}`] : []),
  ].join('; ');
  return [
    found({
      ...place,
      level: judge(['stop', share > 1], ['caution', share > COMFORTABLE]),
      field: weld.fields.leg,
      title: `Fillet ${facts.format.length(weld.leg)} ${weld.sides === 'both' ? 'both sides' : 'one side'}, ${percent(share)} used`,
      says: `Static, at its worst end, for 483 MPa weld metal. Starts, craters and fatigue are not covered, nor the wall of a thin tube that it pulls on.${share > COMFORTABLE ? ' A longer edge, a larger leg, or a shorter lever would do.' : ''}`,
      value: quantity(line.combined / (throatOverLeg * weld.leg), 'MPa'),
      limit: quantity(limit / (throatOverLeg * weld.leg), 'MPa'),
      formula: `${parts}; together ${digits(line.combined)} N/mm against min(0.30·483·0.707·${digits(weld.leg)}, 0.40·${strength.yieldMegapascals}·${digits(weld.leg)}) = ${digits(limit)} N/mm`,
      source: weakestSource(fillet.source, line.source),
    }),
  ];
}
