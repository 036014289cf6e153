// The rules of a mounting plate, in the order in which they are read.
import {
  checkInsideCorner,
  checkLabel,
  checkMaterialCaution,
  checkPlateSize,
  checkSmallHoles,
  checkUse,
  checkWebs,
  mergeNotChecked,
  type Facts,
} from '../../checks/index.js';
import { findMaterial } from '../../handbook/index.js';
import type { Finding, Part } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import { underFields } from '../shared/bolted.js';
import { checkBase, checkMotor } from './check-holes.js';
import type { MountingPlate } from './parameters.js';
import { fieldOfFeature, resolvePlate, type ResolvedPlate } from './resolve.js';

function checkCorners(p: MountingPlate, r: ResolvedPlate, facts: Facts): readonly Finding[] {
  const floor = r.outside.notchFloor;
  return [
    ...(p.window === undefined
      ? []
      : checkInsideCorner(
          {
            radius: p.window.corner.mm,
            at: { x: p.window.x.mm + p.window.width.mm / 2, y: p.window.y.mm + p.window.height.mm / 2 },
            featureId: 'window',
            field: 'window.corner',
          },
          facts,
        )),
    ...(p.notch === undefined || floor === undefined
      ? []
      : checkInsideCorner(
          { radius: p.notch.corner.mm, at: floor, featureId: 'outline', field: 'notch.corner' },
          facts,
        )),
  ];
}

/** All findings of the plate. */
export function checkMountingPlate(part: Part, p: MountingPlate, facts: Facts): readonly Finding[] {
  const answer = resolvePlate(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const r = answer.value;
  const fieldOf = ({ id }: { readonly id: string }) => {
    if (id === 'motor.pilot') return { field: 'pilot' };
    if (id.startsWith('motor')) return { field: 'motorBolt' };
    return {
      field: 'holes',
      remedies: [
        {
          says: 'Mark the holes and drill them',
          change: [{ op: 'add' as const, path: '/holes', value: 'drill' }],
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
    ...checkBase(part, p, r, material.row, facts),
    ...checkMotor(part, p, r, facts),
    ...checkCorners(p, r, facts),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...underFields(checkPlateSize(part, facts), { outside: p.shape === 'hull' ? 'edge' : 'width' }),
  ]);
}
