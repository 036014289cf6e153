// Slots: wide enough to pierce in, long enough for what they adjust, held along their length by friction alone.
import type { Point } from '../geometry/index.js';
import { findGrade, slipLoad, type GradeName, type Source, type Thread } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import { pierceRadius } from '../process/index.js';
import type { Facts } from './facts.js';
import { digits, found, judge, percent, quantity } from './findings.js';

const PIERCE_ROOM: Source = {
  title: 'Narrowest slot: four kerfs',
  where: 'a pierce is up to 3 kerfs wide and stands half a kerf off both finished sides',
  certainty: 'common practice',
};

/** What an eye must be wider than a slot to pierce in, mm. */
const EYE_LEAD = 1;

/** A slot to be judged. */
export interface JudgedSlot {
  readonly featureId: string;
  readonly at: Point;
  /** Across, mm. */
  readonly width: number;
  /** Diameter of a round eye in it to pierce in, mm. */
  readonly eye?: number | undefined;
}

/** Whether the torch can pierce inside each size of slot; the finding goes to `field`. */
export function checkSlotWidth(
  slots: readonly JudgedSlot[],
  field: string,
  facts: Facts,
): readonly Finding[] {
  const judged = new Set<string>();
  return slots.flatMap(({ featureId, at, width, eye }) => {
    // In an eye the lead-in goes to the round side, a millimetre longer than the crater's half.
    const room = Math.max(width, (eye ?? 0) - EYE_LEAD);
    const key = room.toFixed(3);
    if (judged.has(key)) return [];
    judged.add(key);
    const least = 2 * pierceRadius(facts.kerf.amount) + facts.kerf.amount;
    const level = judge(['stop', room < least - 1e-6]);
    return [
      found({
        code: 'slot-width',
        level,
        subject: { featureId },
        anchor: at,
        field,
        title:
          level === 'pass'
            ? `Slot ${facts.format.length(room)} wide: room to pierce inside`
            : `Slot ${facts.format.length(room)} wide is too narrow to pierce in, ${facts.format.length(least)} wanted`,
        says:
          level === 'pass'
            ? 'The crater of the pierce stays off both sides.'
            : 'The crater would eat into its sides. A wider slot, a round eye in it, a finer nozzle, or drilling the ends and sawing between would do.',
        value: quantity(room, 'mm'),
        limit: quantity(least, 'mm'),
        formula: `2 × 1.5 × ${digits(facts.kerf.amount)} + ${digits(facts.kerf.amount)} = ${digits(least)}`,
        source: PIERCE_ROOM,
      }),
    ];
  });
}

/** What a slotted joint must hold. */
export interface SlottedJoint {
  readonly thread: Thread;
  readonly grade: GradeName;
  readonly count: number;
  /** Pull along the slots, N; undefined when it is not known. */
  readonly pullNewtons: number | undefined;
  readonly at: Point;
  readonly featureId: string;
  /** The parameter that states the pull. */
  readonly field: string;
}

/** Kept between pull and slip, for what preload scatters and what a start adds. */
const SLIP_RESERVE = 1.5;

/** Pull against friction. Above it, a jacking screw or a stop must take the pull. */
export function checkSlip(joint: SlottedJoint, facts: Facts): readonly Finding[] {
  const grade = findGrade(joint.grade, joint.thread);
  if (!grade.found) return [];
  const slip = slipLoad(joint.thread, grade.row, joint.count);
  const place = {
    code: 'slot-slip',
    subject: { featureId: joint.featureId },
    anchor: joint.at,
    field: joint.field,
    source: slip.source,
  } as const;
  const holds = `${joint.count} × ${digits(slip.friction)} × ${digits(slip.preloadNewtons, 0)} N = ${digits(slip.newtons, 0)} N`;
  if (joint.pullNewtons === undefined) {
    return [
      found({
        ...place,
        level: 'note',
        title: `Slots hold by friction alone: about ${facts.format.force(slip.newtons)}`,
        says: 'Bolts, clean and dry, tightened to three quarters of proof. Give the pull along the slots and it is weighed against that; a jacking screw behind the slide holds what friction does not.',
        value: quantity(slip.newtons, 'N'),
        formula: holds,
      }),
    ];
  }
  const share = joint.pullNewtons / slip.newtons;
  const level = judge(['caution', share > 1 / SLIP_RESERVE]);
  return [
    found({
      ...place,
      level,
      title: `Pull along the slots ${facts.format.force(joint.pullNewtons)}, ${percent(share)} of what friction holds`,
      says:
        level === 'pass'
          ? `Friction holds about ${facts.format.force(slip.newtons)} when the bolts are tight, clean and dry; grease or paint under the washers undoes that.`
          : 'The slide creeps and the chain goes slack. A jacking screw or a stop behind it, more or larger bolts would do.',
      value: quantity(joint.pullNewtons, 'N'),
      limit: quantity(slip.newtons / SLIP_RESERVE, 'N'),
      formula: `${holds}; ÷ ${SLIP_RESERVE} = ${digits(slip.newtons / SLIP_RESERVE, 0)} N`,
    }),
  ];
}

const TAKE_UP: Source = {
  title: 'Chain length and centre distance',
  where: 'L = 2 C + …: two links more or less are about one pitch of centre distance',
  certainty: 'published',
};

/** Whether a slide reaches from one even number of links to the next. */
export function checkTakeUp(
  slide: {
    readonly travel: number;
    readonly pitch: number;
    readonly chain: string;
    readonly field: string;
    readonly at: Point;
  },
  facts: Facts,
): readonly Finding[] {
  const level = judge(['caution', slide.travel < slide.pitch - 1e-6]);
  return [
    found({
      code: 'take-up',
      level,
      anchor: slide.at,
      field: slide.field,
      title: `Travel ${facts.format.length(slide.travel)}, one pitch of ${slide.chain} is ${facts.format.length(slide.pitch)}`,
      says:
        level === 'pass'
          ? 'It reaches from one even number of links to the next, so that some even chain always comes tight.'
          : 'Between two even numbers of links lies about one pitch of centre distance: with less travel it may take an offset link, which weakens the chain.',
      value: quantity(slide.travel, 'mm'),
      limit: quantity(slide.pitch, 'mm'),
      formula: `ΔC = ΔL ÷ 2 = 2 × ${digits(slide.pitch, 3)} ÷ 2 = ${digits(slide.pitch, 3)}`,
      source: TAKE_UP,
    }),
  ];
}

const CORNERS: Source = {
  title: 'Inside corners of a thermal cut',
  where: 'no sharper than half the kerf; slow corners gouge, so a radius of 2 mm or more cuts cleaner',
  certainty: 'common practice',
};

/** Inside corners against the kerf: what is asked sharper than half of it comes out at half of it. */
export function checkInsideCorner(
  corner: { readonly radius: number; readonly at: Point; readonly featureId: string; readonly field: string },
  facts: Facts,
): readonly Finding[] {
  const least = facts.kerf.amount / 2;
  const level = judge(['note', corner.radius < least - 1e-6]);
  return [
    found({
      code: 'inside-corner',
      level,
      subject: { featureId: corner.featureId },
      anchor: corner.at,
      field: corner.field,
      title:
        level === 'pass'
          ? `Inside corners of ${facts.format.length(corner.radius)} follow the torch`
          : `Inside corners of ${facts.format.length(corner.radius)} come out at about ${facts.format.length(least)}`,
      says: 'A part with square corners needs a relief there, or a chamfer of its own.',
      value: quantity(corner.radius, 'mm'),
      limit: quantity(least, 'mm'),
      formula: `kerf ÷ 2 = ${digits(facts.kerf.amount)} ÷ 2 = ${digits(least)}`,
      source: CORNERS,
    }),
  ];
}
