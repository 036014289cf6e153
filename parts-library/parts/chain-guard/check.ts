// The rules of a chain guard, in the order in which they are read.
import {
  checkLabel,
  checkMaterialCaution,
  checkPlateSize,
  checkSlotWidth,
  checkSmallHoles,
  checkUse,
  checkWebs,
  type Facts,
} from '../../checks/index.js';
import { findMaterial } from '../../handbook/index.js';
import type { Finding, Part } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import { underFields } from '../shared/bolted.js';
import { checkReach } from './check-reach.js';
import { checkTabs } from './check-tabs.js';
import type { ChainGuard } from './parameters.js';
import { resolveGuard } from './resolve.js';
import { windowMiddle } from './window.js';

/** The parameter that makes room beside a feature. */
const webField = (id: string): string => {
  if (id.startsWith('window')) return 'pitch';
  return id.startsWith('axle') ? 'axleRoom' : 'tabHole';
};

/** All findings of the guard. */
export function checkChainGuard(part: Part, p: ChainGuard, facts: Facts): readonly Finding[] {
  const answer = resolveGuard(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const r = answer.value;
  const fieldOf = ({ id }: { readonly id: string }) => {
    if (id.startsWith('window')) return { field: 'opening' };
    if (id.startsWith('axle')) return { field: id === 'axle.small' ? 'axleSmall' : 'axleLarge' };
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
  return [
    ...checkUse(p.use),
    ...checkMaterialCaution(material.row),
    ...checkReach(p, r, facts),
    ...checkTabs(part, p, r, material.row, facts),
    ...checkSmallHoles(part, facts, fieldOf),
    ...(p.window === 'slots'
      ? checkSlotWidth(
          [{ featureId: 'window.1', at: windowMiddle(p, r.drive), width: p.opening.mm }],
          'opening',
          facts,
        )
      : []),
    ...checkWebs(part, facts).map((web) => ({ ...web, field: webField(web.subject.featureId ?? '') })),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...underFields(checkPlateSize(part, facts), { outside: 'centres' }),
  ];
}
