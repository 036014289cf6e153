// Checks of an own outline: what reading it left open, then the rules of any plate.
import {
  checkLabel,
  checkMaterialCaution,
  checkPlateSize,
  checkSmallHoles,
  checkUse,
  checkWebs,
  digits,
  found,
  judge,
  quantity,
  type Facts,
} from '../../checks/index.js';
import { distanceWithin, nearestOnContour } from '../../geometry/index.js';
import { findMaterial, goodEdgeDistance, minEdgeDistance, type Source } from '../../handbook/index.js';
import { outlineOf, type CutFeature, type Finding, type Part, type Remedy } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import { underFields } from '../shared/bolted.js';
import { roundText } from '../shared/words.js';
import { holeGroups } from './groups.js';
import type { OwnOutline } from './parameters.js';
import { resolveOutline, shortEdges } from './resolve.js';

const READING: Source = {
  title: 'Drawing as it was read',
  where: 'what was mended, assumed or left out when it was brought in',
  certainty: 'common practice',
};

const TORCH: Source = {
  title: 'Width of the cut',
  where: 'a torch follows nothing finer than its own kerf',
  certainty: 'common practice',
};

/** What reading could not use is a stop; what it mended is told. */
function checkReading({ drawing }: OwnOutline): readonly Finding[] {
  const { faults, notes, source } = drawing;
  return [
    ...faults.map((says) =>
      found({
        code: 'drawing-fault',
        level: 'stop',
        field: 'drawing',
        title: 'A contour of the drawing was left out',
        says: `${says} Mend it in the drawing and bring it in again.`,
        source: READING,
      }),
    ),
    ...notes.map((note) =>
      found({
        code: 'drawing-note',
        level: 'note',
        field: 'drawing',
        title: note.slice(0, Math.max(1, note.indexOf('. '))),
        says: `${note.slice(note.indexOf('. ') + 2)} (${source.name})`,
        source: READING,
      }),
    ),
  ];
}

/** Scaled evenly, bolt holes are scaled too. */
function checkScale(p: OwnOutline, scale: number): readonly Finding[] {
  if (Math.abs(scale - 1) < 1e-9) return [];
  const field = p.width !== undefined ? 'width' : p.height !== undefined ? 'height' : 'scale';
  return [
    found({
      code: 'drawing-scaled',
      level: 'caution',
      field,
      title: `Made ${roundText(scale)} times as large as drawn`,
      says: 'Holes, slots and lettering are scaled too; measure one of them on the print.',
      value: quantity(scale, '1'),
      source: READING,
    }),
  ];
}

/** Stretches of the edge finer than the kerf come out rounded. */
function checkDetail(part: Part, facts: Facts): readonly Finding[] {
  const kerf = facts.kerf.amount;
  const count = shortEdges(part.features, kerf);
  const level = judge(['note', count > 0]);
  return [
    found({
      code: 'detail-below-kerf',
      level,
      field: 'drawing',
      title:
        count === 0
          ? 'No detail finer than the kerf'
          : `${count} ${count === 1 ? 'stretch' : 'stretches'} of the edges shorter than the kerf`,
      says:
        count === 0
          ? 'Every line and arc is longer than the cut is wide.'
          : `The torch rounds what is shorter than ${facts.format.length(kerf)}; many of them wear the consumables and slow the table.`,
      value: quantity(count, '1'),
      limit: quantity(kerf, 'mm'),
      source: TORCH,
    }),
  ];
}

/** Round holes larger than this are windows, not for bolts, mm: an M24 bolt's clearance. */
const LARGEST_BOLT_HOLE = 26;

/** Edge distances beyond this many hole diameters are not told apart. */
const FAR_FROM_EDGE = 10;

/** The hole that stands nearest to the outside for its size: a bolt in it would be judged by this. */
function checkEdges(part: Part, facts: Facts): readonly Finding[] {
  const { contour } = outlineOf(part);
  const holes = holeGroups(part.features)
    .filter(({ size }) => size <= LARGEST_BOLT_HOLE)
    .flatMap(({ size, places, featureIds }) =>
      places.map((at, i) => ({
        size,
        at,
        id: featureIds[i] ?? '',
        distance: distanceWithin(contour, at, FAR_FROM_EDGE * size),
      })),
    );
  const [first, ...others] = holes;
  if (first === undefined) return [];
  const worst = others.reduce((a, b) => (b.distance / b.size < a.distance / a.size - 1e-9 ? b : a), first);
  const { point, distance: apart } = nearestOnContour(contour, worst.at);
  const least = minEdgeDistance(worst.size, 'metric');
  const good = goodEdgeDistance(worst.size);
  const level = judge(['caution', apart < least.value - 1e-6], ['note', apart < good.value - 1e-6]);
  const limit = level === 'caution' ? least : good;
  return [
    found({
      code: 'edge-distance',
      level,
      subject: { featureId: worst.id },
      anchor: { x: (worst.at.x + point.x) / 2, y: (worst.at.y + point.y) / 2 },
      field: 'drawing',
      title: `Hole ⌀${facts.format.length(worst.size)} stands ${facts.format.length(apart)} from the outside, ${facts.format.length(limit.value)} wanted for a bolt that fills it`,
      says:
        level === 'pass'
          ? 'Hole centre to the outside.'
          : 'Hole centre to the outside. A bolt near the edge tears out; more metal there, or a smaller bolt, would do. A hole that carries nothing may stand so.',
      value: quantity(apart, 'mm'),
      limit: quantity(limit.value, 'mm'),
      formula: `${digits(apart)} ÷ ${digits(worst.size)} = ${digits(apart / worst.size)}; least ${digits(least.value)}, good ${digits(good.value)}`,
      source: limit.source,
    }),
  ];
}

/** A hole that the torch cuts badly is drilled from a mark instead, and those smaller too. */
const drillUpTo = ({
  hole,
}: CutFeature): { readonly field: string; readonly remedies: readonly Remedy[] } => {
  const size = Math.ceil((hole?.size ?? 0) * 100) / 100;
  return {
    field: 'markUpTo',
    remedies: [
      {
        says: `Mark holes up to ${roundText(size)} mm and drill them`,
        change: [{ op: 'add', path: '/markUpTo', value: `${size} mm` }],
      },
    ],
  };
};

/** All findings of the part. */
export function checkOwnOutline(part: Part, p: OwnOutline, facts: Facts): readonly Finding[] {
  const answer = resolveOutline(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  return [
    ...checkReading(p),
    ...checkUse(p.use),
    ...checkMaterialCaution(material.row),
    ...checkScale(p, answer.value.scale),
    ...checkSmallHoles(part, facts, drillUpTo),
    ...checkWebs(part, facts).map((web) => ({ ...web, field: 'drawing' })),
    ...checkEdges(part, facts),
    ...checkDetail(part, facts),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...underFields(checkPlateSize(part, facts), { outside: 'width' }),
  ];
}
