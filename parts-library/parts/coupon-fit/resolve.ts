// The slots and bores of a fit ladder and where they lie.
import { circleContour, rectangleContour, type Contour, type Point } from '../../geometry/index.js';
import type { CutFeature, Feature, Format } from '../../model/index.js';
import { linesOf } from '../shared/coupon/ladder.js';
import { etched, headingOf, textWidth } from '../shared/coupon/lettering.js';
import { couponSetting, metalBetween, type CouponSetting } from '../shared/coupon/setting.js';
import type { Resolved } from '../shared/resolved.js';
import type { CouponFit } from './parameters.js';
import { eyeRadius, gaugeSlot, needsEye } from './slot.js';

export interface FitStep {
  readonly id: string;
  /** Finished width or diameter, mm. */
  readonly size: number;
  readonly text: string;
  /** Middle of the slot's straight part, or of the bore. */
  readonly at: Point;
  readonly contour: Contour;
}

export interface FitLadder {
  readonly setting: CouponSetting;
  readonly slots: readonly FitStep[];
  readonly bores: readonly FitStep[];
  /** Radius of the eyes, when the slots have them, mm. */
  readonly eye: number | undefined;
  readonly texts: readonly string[];
  readonly width: number;
  readonly height: number;
  readonly features: readonly Feature[];
}

const ROUND_TEXT = 3;

export function fitLadder(p: CouponFit, format: Format): Resolved<FitLadder> {
  const answer = couponSetting(p);
  if (!answer.ok) return answer;
  const setting = answer.value;
  const { kerf } = setting.row;
  const letters = p.labelHeight.mm;
  const metal = metalBetween(p.thickness.mm);
  const clearances = Array.from({ length: p.count }, (_, index) => p.first.mm + index * p.step.mm);
  const slotSizes = clearances.map((more) => p.tab.mm + more);
  const boreSizes = clearances.map((more) => p.pin.mm + more);
  const texts = [slotSizes, boreSizes].map((sizes) => sizes.map((size) => format.bare(size)));
  // One eye for all, so that the slots differ in nothing but their width.
  const eye = slotSizes.some((size) => needsEye(size, kerf)) ? eyeRadius(kerf) : undefined;
  const widestSlot = Math.max(...slotSizes, 2 * (eye ?? 0));
  const widest = Math.max(widestSlot, ...boreSizes);
  const pitch = Math.ceil(
    Math.max(widest + metal, ...texts.flat().map((text) => textWidth(text, letters) + 2 * ROUND_TEXT)),
  );
  const across = p.count * pitch + metal;
  const heading = linesOf(headingOf('FIT', p, setting, format), letters, across - 2 * metal);
  const width = Math.ceil(Math.max(across, ...heading.map((line) => textWidth(line, letters) + 2 * metal)));
  const lineHeight = letters + ROUND_TEXT;
  const slotRoom = p.slotLength.mm + (eye === undefined ? 0 : 2 * eye);
  const boreRoom = Math.max(...boreSizes);
  const headRoom = metal / 2 + heading.length * lineHeight;
  const height = Math.ceil(headRoom + 2 * (lineHeight + ROUND_TEXT) + slotRoom + boreRoom + 2.5 * metal);
  const xOf = (index: number): number => width / 2 + (index - (p.count - 1) / 2) * pitch;
  const slotTop = height - headRoom - metal / 2 - lineHeight - ROUND_TEXT;
  const boreY = metal + boreRoom / 2;
  const slots = slotSizes.map((size, index): FitStep => {
    const rise = eye === undefined || eye <= size / 2 ? 0 : Math.sqrt(eye * eye - (size / 2) ** 2);
    const x = xOf(index);
    const foot = { x, y: slotTop - p.slotLength.mm - rise };
    return {
      id: `slot.${index + 1}`,
      size,
      text: texts[0]?.[index] ?? '',
      at: { x, y: slotTop - p.slotLength.mm / 2 },
      contour: gaugeSlot(foot, size, p.slotLength.mm, eye),
    };
  });
  const bores = boreSizes.map((size, index): FitStep => {
    const at = { x: xOf(index), y: boreY };
    return {
      id: `bore.${index + 1}`,
      size,
      text: texts[1]?.[index] ?? '',
      at,
      contour: circleContour(at, size / 2, 'opening'),
    };
  });
  const outline: CutFeature = {
    id: 'outline',
    name: 'outline',
    purpose: 'outline',
    contour: rectangleContour({ centre: { x: width / 2, y: height / 2 }, width, height }, 'outline'),
  };
  const over = (step: FitStep, y: number): readonly Feature[] =>
    etched(`${step.id}.etch`, `size ${step.text}`, step.text, { x: step.at.x, y }, letters);
  return {
    ok: true,
    value: {
      setting,
      slots,
      bores,
      eye,
      texts: [...heading, ...texts.flat()],
      width,
      height,
      features: [
        outline,
        ...slots.map((step): CutFeature => ({
          id: step.id,
          name: `slot ${step.text}`,
          purpose: 'opening',
          contour: step.contour,
        })),
        ...bores.map((step): CutFeature => ({
          id: step.id,
          name: `bore ⌀${step.text}`,
          purpose: 'opening',
          contour: step.contour,
          hole: { finish: 'cut', size: step.size, takes: p.pin.mm },
        })),
        ...heading.flatMap((line, index) =>
          etched(
            `heading.${index + 1}`,
            'heading',
            line,
            { x: width / 2, y: height - metal / 2 - letters / 2 - index * lineHeight },
            letters,
          ),
        ),
        ...slots.flatMap((step) => over(step, slotTop + ROUND_TEXT + letters / 2)),
        ...bores.flatMap((step) => over(step, boreY + boreRoom / 2 + ROUND_TEXT + letters / 2)),
      ],
    },
  };
}
