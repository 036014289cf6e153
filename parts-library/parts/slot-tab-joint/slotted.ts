// The plate with slots: a rectangle, its slots with relieved corners and, where they are narrow, an eye to pierce in.
import { makeContour, rectangleContour, type Contour } from '../../geometry/index.js';
import type { CutFeature, EdgeUse, Feature } from '../../model/index.js';
import { refuseStray } from '../shared/finish-part.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import { largestRelief, tabSlot } from '../shared/tab-slot.js';
import { roundText } from '../shared/words.js';
import type { Joint } from './joint.js';
import type { SlotTabJoint } from './parameters.js';

/** The long sides of a slot seat on the tab. */
function edgesOf(contour: Contour, y: number, joint: Joint): readonly EdgeUse[] {
  return contour.flatMap((vertex, segment): readonly EdgeUse[] => {
    const next = contour[(segment + 1) % contour.length];
    const isLong =
      next !== undefined &&
      vertex.bulge === 0 &&
      Math.abs(vertex.y - next.y) < 1e-6 &&
      Math.abs(Math.abs(vertex.y - y) - joint.slotWidth / 2) < 1e-6;
    return isLong ? [{ segment, role: 'mating' }] : [];
  });
}

function refuseSizes(p: SlotTabJoint, joint: Joint): Resolved<never> | undefined {
  const most = Math.min(p.plateLength.mm, p.plateWidth.mm) / 2;
  if (p.corner.mm > most)
    return refusal(
      'corner',
      `Corners of ${roundText(p.corner.mm)} mm do not fit on ${roundText(p.plateLength.mm)} × ${roundText(p.plateWidth.mm)} mm; ${roundText(most)} mm is the most.`,
    );
  const bites = 2 * Math.SQRT2 * p.relief.mm;
  if (p.relief.mm >= largestRelief(joint.slotWidth))
    return refusal(
      'relief',
      `Reliefs of ${roundText(p.relief.mm)} mm use up the ends of a slot ${roundText(joint.slotWidth)} mm wide; ${roundText(largestRelief(joint.slotWidth) - 0.005)} mm is the most.`,
    );
  const eye = p.eye?.mm ?? 0;
  return eye > joint.slotWidth && eye >= joint.slotLength - bites
    ? refusal(
        'eye',
        `An eye of ${roundText(eye)} mm leaves nothing of a slot ${roundText(joint.slotLength)} mm long to seat on.`,
      )
    : undefined;
}

/** Outline and slots; the joint's middle line is at `jointAt` over the lower edge, the plate's middle at the origin. */
export function slottedPlate(p: SlotTabJoint, joint: Joint): Resolved<readonly Feature[]> {
  const refused = refuseSizes(p, joint);
  if (refused !== undefined) return refused;
  const y = jointLine(p);
  const outline: CutFeature = {
    id: 'outline',
    name: 'outline',
    purpose: 'outline',
    contour: rectangleContour(
      {
        centre: { x: 0, y: 0 },
        width: p.plateLength.mm,
        height: p.plateWidth.mm,
        corner: p.corner.mm,
      },
      'outline',
    ),
  };
  const one = tabSlot({
    length: joint.slotLength,
    width: joint.slotWidth,
    relief: p.relief.mm,
    eye: p.eye?.mm,
  });
  const slots = joint.centres.map((x, index): CutFeature => {
    const contour = makeContour(
      one.map((vertex) => ({ ...vertex, x: vertex.x + x, y: vertex.y + y })),
      { direction: 'opening' },
    );
    return {
      id: `slot.${index + 1}`,
      name: `slot ${index + 1}`,
      purpose: 'opening',
      contour,
      edges: edgesOf(contour, y, joint),
    };
  });
  const stray = refuseStray(outline.contour, slots, () =>
    joint.slotLength + Math.abs(2 * (joint.centres[0] ?? 0)) >= p.plateLength.mm ? 'plateLength' : 'jointAt',
  );
  return stray ?? { ok: true, value: [outline, ...slots] };
}

/** Height of the slots' middle line over the middle of the slotted plate, mm. */
export const jointLine = (p: SlotTabJoint): number => p.jointAt.mm - p.plateWidth.mm / 2;
