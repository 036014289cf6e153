// The rules of a bearing flange plate, in the order in which they are read.
import {
  checkBoltLoads,
  checkBoltUp,
  checkEdgeDistance,
  checkEdgeFillet,
  checkEdgeWeld,
  checkHeadRoom,
  checkLabel,
  checkMaterialCaution,
  checkPlateSize,
  checkSmallHoles,
  checkSpacing,
  checkTapping,
  checkThreadEngagement,
  checkUse,
  checkWebs,
  checkWeldability,
  mergeNotChecked,
  type EdgeWeld,
  type Facts,
} from '../../checks/index.js';
import { findMaterial, leastFilletLeg, type Material } from '../../handbook/index.js';
import type { Finding, Part } from '../../model/index.js';
import type { Unit } from '../../units/index.js';
import { letterText } from '../lettering/strokes.js';
import { patternOf, underFields } from '../shared/bolted.js';
import { checkBearing } from './check-bearing.js';
import type { BearingFlange } from './parameters.js';
import { fieldOfFeature, resolveFlange, type ResolvedFlange } from './resolve.js';

const edgeField = (p: BearingFlange, own: string): string => (p.shape === 'hull' ? 'edge' : own);

/** The housing's bolts: edge, spacing, room for heads, bolting up, the pull. */
function checkHousing(
  part: Part,
  p: BearingFlange,
  { flange }: ResolvedFlange,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  if (flange === undefined) return [];
  const { size, holes, circle } = flange;
  const pattern = patternOf(size, holes, {
    boltedHole: p.housingHole,
    across: circle.diameter,
    plusMinus: circle.plusMinus,
  });
  const load = p.pull === undefined ? undefined : { newtonMetres: 0, pullNewtons: p.pull.value };
  return underFields(
    [
      ...checkEdgeDistance(part, pattern, facts),
      ...checkSpacing(pattern, facts),
      ...checkHeadRoom(pattern, undefined, facts),
      ...checkBoltUp(pattern, facts).map((finding) =>
        finding.code === 'not-checked'
          ? {
              ...finding,
              title: `will the housing bolt up (${size.thread.name})`,
              says: 'Measure one hole of the housing the narrow way: with it the room for the bolts is weighed.',
            }
          : finding,
      ),
      ...checkTapping(pattern, p.thickness.mm, facts),
      ...checkThreadEngagement(pattern, { material, thickness: p.thickness.mm }, '8.8', facts),
      ...checkBoltLoads(part, pattern, load, material, '8.8', facts).map((finding) =>
        finding.code === 'not-checked'
          ? {
              ...finding,
              title: 'housing bolts under the pull',
              says: 'Give the pull on the bearing, and the housing’s bolts and their bearing on the plate are checked.',
            }
          : finding,
      ),
    ],
    { edge: edgeField(p, 'boltCircle'), bolts: 'boltCircle', boltedHole: 'housingHole', torque: 'pull' },
  );
}

function checkMount(
  part: Part,
  p: BearingFlange,
  { mount, clamp }: ResolvedFlange,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  const plate = { material, thickness: p.thickness.mm };
  const held =
    mount === undefined
      ? []
      : underFields(
          [
            ...checkEdgeDistance(part, patternOf(mount.size, mount.holes), facts),
            ...checkTapping(patternOf(mount.size, mount.holes), p.thickness.mm, facts),
            ...checkThreadEngagement(patternOf(mount.size, mount.holes), plate, '8.8', facts),
          ],
          { edge: edgeField(p, 'mountX'), holes: 'mountHoles', bolt: 'mountBolt' },
        );
  const ring =
    clamp === undefined
      ? []
      : underFields(
          [
            ...checkEdgeDistance(part, patternOf(clamp.size, clamp.holes), facts),
            ...checkSpacing(patternOf(clamp.size, clamp.holes), facts),
            ...checkTapping(patternOf(clamp.size, clamp.holes), p.thickness.mm, facts),
            ...checkThreadEngagement(patternOf(clamp.size, clamp.holes), plate, '8.8', facts),
          ],
          { edge: 'clampBolt', bolts: 'clampBolts', holes: 'clampHoles', bolt: 'clampBolt' },
        );
  return [...held, ...ring];
}

/** Leg of the foot's fillets, mm. */
export const legOf = (p: BearingFlange, unit: Unit): number =>
  p.weldLeg?.mm ?? leastFilletLeg(Math.min(p.thickness.mm, p.under.mm), unit).leg;

/** The foot's fillets; the pull runs along the foot at the shaft's height, the worst way for them. */
function checkFoot(
  p: BearingFlange,
  r: ResolvedFlange,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  if (p.mount !== 'welded') return [];
  const weld: EdgeWeld = {
    leg: legOf(p, facts.format.unit),
    sides: 'both',
    length: r.foot,
    thickness: p.thickness.mm,
    thinner: Math.min(p.thickness.mm, p.under.mm),
    material,
    anchor: { x: 0, y: -p.height.mm / 2 },
    fields: { leg: 'weldLeg', length: 'width', sides: 'weldLeg' },
  };
  const load =
    p.pull === undefined
      ? undefined
      : {
          away: 0,
          along: p.pull.value,
          moment: p.pull.value * (r.shaft.y + p.height.mm / 2),
        };
  return [
    ...checkWeldability(material),
    ...checkEdgeFillet(weld, facts),
    ...checkEdgeWeld(weld, load, facts),
  ];
}

const HOLE_FIELDS: readonly (readonly [prefix: string, field: string])[] = [
  ['flange', 'holes'],
  ['clamp', 'clampHoles'],
  ['mount', 'mountHoles'],
];

/** All findings of the plate. */
export function checkBearingFlange(part: Part, p: BearingFlange, facts: Facts): readonly Finding[] {
  const answer = resolveFlange(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const r = answer.value;
  const fieldOf = ({ id }: { readonly id: string }) => {
    const field = HOLE_FIELDS.find(([prefix]) => id.startsWith(prefix))?.[1];
    return field === undefined
      ? { field: p.bearing === 'seat' ? 'outside' : 'collar' }
      : {
          field,
          remedies: [
            {
              says: 'Mark the holes and drill them',
              change: [{ op: 'add' as const, path: `/${field}`, value: 'drill' }],
            },
          ],
        };
  };
  return mergeNotChecked([
    ...checkUse(p.use),
    ...checkMaterialCaution(material.row),
    ...checkSmallHoles(part, facts, fieldOf),
    ...checkWebs(part, facts).map((web) => ({
      ...web,
      field: fieldOfFeature(p, web.subject.featureId ?? ''),
    })),
    ...checkBearing(p, r, facts),
    ...checkHousing(part, p, r, material.row, facts),
    ...checkMount(part, p, r, material.row, facts),
    ...checkFoot(p, r, material.row, facts),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...underFields(checkPlateSize(part, facts), { outside: 'width' }),
  ]);
}
