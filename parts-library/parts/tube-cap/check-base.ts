// The bolts of a base plate: room beside the tube and its weld, their pull, and the plate that they bend.
import { digits, found, judge, percent, quantity, type Facts } from '../../checks/index.js';
import {
  basePlateThickness,
  boltEnvelope,
  findGrade,
  preload,
  strengthAt,
  tighteningTorque,
  type Material,
} from '../../handbook/index.js';
import { nearestOnContour, type Point } from '../../geometry/index.js';
import type { Finding } from '../../model/index.js';
import type { TubeCap } from './parameters.js';
import { filletOf, sectionContour, type ResolvedCap } from './resolve.js';

/** Bolt's centre to the tube's outside, mm, the nearest of them, and which. */
function nearestToTube(r: ResolvedCap): { readonly lever: number; readonly at: Point } {
  const tube = sectionContour(r.tube, 'outline');
  const all = r.holes.map(({ at }) => ({ at, lever: nearestOnContour(tube, at).distance }));
  return all.reduce((a, b) => (b.lever < a.lever - 1e-9 ? b : a), all[0] ?? { at: { x: 0, y: 0 }, lever: 0 });
}

/** Head, washer and socket of a bolt beside the tube and its fillet. */
export function checkBesideTube(p: TubeCap, r: ResolvedCap, facts: Facts): readonly Finding[] {
  const envelope = boltEnvelope(r.size.thread);
  if (!envelope.found) return [];
  const { acrossCorners, washerOutside, socketOutside } = envelope.row;
  const { lever, at } = nearestToTube(r);
  const room = lever - filletOf(p, facts.format.unit);
  const seat = Math.max(acrossCorners.value, washerOutside.value) / 2;
  const socket = socketOutside.value / 2;
  const { length } = facts.format;
  const level = judge(['stop', room < seat], ['caution', room < socket]);
  return [
    found({
      code: 'head-room-tube',
      level,
      subject: { featureId: r.holes[0]?.featureId ?? 'outline' },
      anchor: at,
      field: 'width',
      title:
        level === 'pass'
          ? `Head, washer and socket of ${r.size.thread.name} clear the tube`
          : level === 'caution'
            ? 'A socket does not go on beside the tube; a spanner does'
            : `Head or washer of ${r.size.thread.name} does not seat beside the tube’s weld`,
      says: `From bolt centre to the fillet ${length(room)}; head or washer needs ${length(seat)}, a hand socket about ${length(socket)} (measure yours). A larger base would do.`,
      value: quantity(room, 'mm'),
      limit: quantity(socket, 'mm'),
      formula: `${digits(lever)} − ${digits(filletOf(p, facts.format.unit))} = ${digits(room)}`,
      source: socketOutside.source,
    }),
  ];
}

/**
 * Pull of the hardest worked bolt, N: its share of the pull, and of the moment. On a rectangle the moment turns about the
 * far row; on a circle T = 4 M/(n D), as for a ring of bolts.
 *
 * @example 4 bolts 90 apart, 600 N·m: 600 000 ÷ (2 × 90) = 3333 N
 */
export function boltPull(p: TubeCap, r: ResolvedCap): number {
  const moment = (p.overturning?.value ?? 0) * 1000;
  const spread = r.plate.isRound
    ? (p.bolts * (r.plate.width - 2 * p.inset.mm)) / 4
    : (p.bolts / 2) * (p.bolts === 2 ? r.plate.width : Math.min(r.plate.width, r.plate.height)) -
      p.bolts * p.inset.mm;
  return (p.uplift?.value ?? 0) / p.bolts + moment / spread;
}

/** Bolts against their preload, plate against bending over the tube's face. */
export function checkBaseLoad(
  p: TubeCap,
  r: ResolvedCap,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  const strength = strengthAt(material, p.thickness.mm);
  const grade = findGrade(p.boltGrade, r.size.thread);
  if (strength === undefined) return [];
  if (p.uplift === undefined && p.overturning === undefined) {
    return [
      found({
        code: 'not-checked',
        level: 'note',
        field: 'overturning',
        title: 'bolts and base under load',
        says: 'Give the pull or the overturning moment, and bolts and plate thickness are checked.',
        source: { title: 'Load on the part', where: 'not given', certainty: 'common practice' },
      }),
    ];
  }
  const newtons = boltPull(p, r);
  const { lever, at } = nearestToTube(r);
  const toEdge = 2 * p.inset.mm;
  const width = Math.max(1, Math.min(2 * lever, lever + toEdge / 2));
  const needed = basePlateThickness({ newtons, lever, width, yieldMegapascals: strength.yieldMegapascals });
  const { length, force } = facts.format;
  const isThin = p.thickness.mm < needed.value;
  const place = { subject: { featureId: 'bolt.1' }, anchor: at } as const;
  const holding = grade.found ? preload(r.size.thread, grade.row) : undefined;
  return [
    ...(holding === undefined || !grade.found
      ? []
      : [
          found({
            ...place,
            code: 'bolt-pull',
            level: judge(['stop', newtons > holding], ['caution', newtons > holding / 2]),
            field: 'bolt',
            title: `Bolt pull ${force(newtons)}, ${percent(newtons / holding)} of the preload of ${r.size.thread.name} ${p.boltGrade}`,
            says: `Beyond the preload the base lifts and the bolts work loose. Static; prying of a thin plate adds to it.${newtons > holding / 2 ? ' Larger or more bolts, or a wider base would do.' : ''}`,
            value: quantity(newtons, 'N'),
            limit: quantity(holding, 'N'),
            formula: `0.75 × ${grade.row.proofMegapascals} × ${digits(r.size.thread.stressArea)} = ${digits(holding, 0)} N`,
            source: tighteningTorque(r.size.thread, grade.row, 'dry').source,
          }),
        ]),
    found({
      ...place,
      code: 'base-thickness',
      level: judge(['stop', p.thickness.mm < 0.75 * needed.value], ['caution', isThin]),
      field: 'thickness',
      title: `Base ${length(p.thickness.mm)} thick, ${length(needed.value)} needed beside a bolt`,
      says: isThin
        ? 'The bolts bend it up beside the tube. A thicker plate, bolts nearer to the tube, or gussets would do.'
        : 'Bending of the plate over the tube’s face, the bolt’s pull spread at 45°. Static.',
      value: quantity(p.thickness.mm, 'mm'),
      limit: quantity(needed.value, 'mm'),
      formula: `√(4 × 1.67 × ${digits(newtons, 0)} × ${digits(lever)} ÷ (${digits(width)} × ${strength.yieldMegapascals})) = ${digits(needed.value)}`,
      source: needed.source,
    }),
  ];
}
