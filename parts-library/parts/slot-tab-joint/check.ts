// The rules of a slot-and-tab joint, in the order in which they are read.
import {
  checkLabel,
  checkMaterialCaution,
  checkPlateSize,
  checkSlotWidth,
  checkUse,
  checkWebs,
  checkWeldability,
  found,
  quantity,
  type Facts,
} from '../../checks/index.js';
import { findMaterial } from '../../handbook/index.js';
import type { Finding, Part } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import { underFields } from '../shared/bolted.js';
import { checkFit, checkRelief, checkTabs } from './check-fit.js';
import type { Joint } from './joint.js';
import type { SlotTabJoint } from './parameters.js';
import { resolveJoint } from './resolve.js';
import { jointLine } from './slotted.js';

/** Slots that are too narrow to pierce in, with the eye that would do. */
function checkPierce(p: SlotTabJoint, joint: Joint, facts: Facts): readonly Finding[] {
  if (p.draws === 'tabbed') return [];
  const slot = {
    featureId: 'slot.1',
    at: { x: joint.centres[0] ?? 0, y: jointLine(p) },
    width: joint.slotWidth,
    eye: p.eye?.mm,
  };
  // A round number of millimetres that is five kerfs at least.
  const eye = Math.ceil(5 * facts.kerf.amount);
  return checkSlotWidth([slot], 'eye', facts).map((finding) =>
    finding.level === 'stop'
      ? {
          ...finding,
          remedies: [
            {
              says: `Pierce in an eye of ${facts.format.length(eye)}`,
              change: [{ op: 'add' as const, path: '/eye', value: eye }],
            },
          ],
        }
      : finding,
  );
}

/** What is done with the tab's end. */
function checkProud(p: SlotTabJoint, joint: Joint, facts: Facts): readonly Finding[] {
  if (p.proud.mm === 0) return [];
  const { length } = facts.format;
  const isShy = p.proud.mm < 0;
  const isDeep = -p.proud.mm > joint.slotted / 2;
  return [
    found({
      code: 'tab-proud',
      level: isDeep ? 'caution' : 'note',
      field: 'proud',
      title: isShy
        ? `Tabs end ${length(-p.proud.mm)} under the face`
        : `Tabs stand ${length(p.proud.mm)} proud of the face`,
      says: isShy
        ? isDeep
          ? 'More than half the plate is left to fill: it takes several runs and pulls the plate hollow. Longer tabs would do.'
          : 'Fill with a plug weld and grind it flush.'
        : 'Weld round them, or grind them flush before the next part goes on.',
      value: quantity(p.proud.mm, 'mm'),
      limit: quantity(-joint.slotted / 2, 'mm'),
      source: { title: 'Plug welds in slots', where: 'shop practice', certainty: 'common practice' },
    }),
  ];
}

/** All findings of the plate that is drawn. */
export function checkSlotTabJoint(part: Part, p: SlotTabJoint, facts: Facts): readonly Finding[] {
  const answer = resolveJoint(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const { joint } = answer.value;
  const first = joint.centres[0] ?? 0;
  const place =
    p.draws === 'slotted'
      ? {
          subject: { featureId: 'slot.1' },
          anchor: { x: first + joint.slotLength / 2, y: jointLine(p) },
        }
      : {
          subject: { featureId: 'outline' },
          anchor: { x: first + joint.tabWidth / 2, y: 0 },
        };
  return [
    ...checkUse(p.use),
    ...checkMaterialCaution(material.row),
    ...checkWeldability(material.row),
    ...checkPierce(p, joint, facts),
    ...checkFit(p, joint, place, facts),
    ...checkRelief(p, place, facts),
    ...checkTabs(p, joint, place, facts),
    ...checkProud(p, joint, facts),
    ...(p.draws === 'slotted'
      ? checkWebs(part, facts).map((web) => ({ ...web, field: p.tabs > 1 ? 'tabs' : 'jointAt' }))
      : []),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...underFields(checkPlateSize(part, facts), {
      outside: p.draws === 'slotted' ? 'plateLength' : 'length',
    }),
  ];
}
