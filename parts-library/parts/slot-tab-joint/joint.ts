// The sizes that both plates of a slot-and-tab joint share: tabs, slots, clearances.
import { refusal, type Resolved } from '../shared/resolved.js';
import { roundText } from '../shared/words.js';
import type { SlotTabJoint } from './parameters.js';

export interface Joint {
  /** Thickness of the tabbed and of the slotted plate, mm. */
  readonly tabbed: number;
  readonly slotted: number;
  /** Middles of the tabs along the joint, its middle at 0. */
  readonly centres: readonly number[];
  readonly tabWidth: number;
  /** From the shoulder to the end of a tab, mm. */
  readonly projection: number;
  /** How far an edge of each plate leans from face to face, mm. */
  readonly tabTaper: number;
  readonly slotTaper: number;
  readonly slotWidth: number;
  readonly slotLength: number;
}

/** Least shoulder between a tab and the end of the edge, or between two tabs, mm. */
const LEAST_SHOULDER = 1;

/** Middles of the tabs: evenly shared, or from the first to its mirror image. */
function centresOf({ length, tabs, first }: SlotTabJoint): readonly number[] {
  const start = -length.mm / 2 + (first?.mm ?? length.mm / tabs / 2);
  const step = tabs > 1 ? (-2 * start) / (tabs - 1) : 0;
  return Array.from({ length: tabs }, (_, index) =>
    tabs === 1 && first === undefined ? 0 : start + index * step,
  );
}

/**
 * Slot width = tab thickness + clearance + t tan θ of the slotted plate, since its cut edges lean and the path runs in
 * the middle of the thickness: what is left at the narrow face is the clearance. Along the joint the tab's own edges
 * lean too, so that t tan θ of both plates is added.
 *
 * @example 6 mm on 6 mm, clearance 0.4, 2°: width 6 + 0.4 + 0.2095 = 6.6095; length 30 + 0.4 + 2 × 0.2095 = 30.819
 */
export function jointOf(p: SlotTabJoint): Resolved<Joint> {
  const [tabbed, slotted] =
    p.draws === 'tabbed' ? [p.thickness.mm, p.other.mm] : [p.other.mm, p.thickness.mm];
  const tangent = Math.tan((p.lean.value * Math.PI) / 180);
  const [tabTaper, slotTaper] = [tabbed * tangent, slotted * tangent];
  const projection = slotted + p.proud.mm;
  if (projection <= LEAST_SHOULDER) {
    return refusal(
      'proud',
      `Tabs ${roundText(-p.proud.mm)} mm under the face of a plate of ${roundText(slotted)} mm have nothing left; ${roundText(slotted - LEAST_SHOULDER)} mm is the most.`,
    );
  }
  const centres = centresOf(p);
  const [start = 0] = centres;
  const end = p.length.mm / 2 - Math.abs(start) - p.tabWidth.mm / 2;
  if (end < LEAST_SHOULDER) {
    return refusal(
      p.first === undefined ? 'tabWidth' : 'first',
      `The first tab, ${roundText(p.tabWidth.mm)} mm wide, reaches the end of the edge; a tab further in, narrower, or fewer of them would do.`,
    );
  }
  const [second = start] = centres.slice(1);
  if (p.tabs > 1 && second - start < p.tabWidth.mm + LEAST_SHOULDER) {
    return refusal(
      p.first === undefined ? 'tabs' : 'first',
      `Tabs ${roundText(Math.abs(second - start))} mm apart from middle to middle run into each other; narrower ones, fewer, or the first nearer the end would do.`,
    );
  }
  return {
    ok: true,
    value: {
      tabbed,
      slotted,
      centres,
      tabWidth: p.tabWidth.mm,
      projection,
      tabTaper,
      slotTaper,
      slotWidth: tabbed + p.clearance.mm + slotTaper,
      slotLength: p.tabWidth.mm + p.clearance.mm + slotTaper + tabTaper,
    },
  };
}
