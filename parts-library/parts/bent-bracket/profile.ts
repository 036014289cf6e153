// The bent profile as a chain of legs and bends, and the flat strip that it comes from.
import { bendAllowance, outsideSetback } from '../../handbook/index.js';
import type { BentBracket } from './parameters.js';

export interface Leg {
  /** `legA`, `middle`, `legB`, `flangeA`, `flangeB`: also the parameter that sets it. */
  readonly id: string;
  readonly field: 'legA' | 'middle' | 'legB' | 'flange';
  readonly name: string;
  /** Outside length as a caliper reads it on the bent part, mm. */
  readonly outside: number;
  /** Straight part in the flat: outside less a setback for each bend beside it. */
  readonly straight: number;
  /** Where the straight part begins and ends in the flat, mm from the strip's end. */
  readonly from: number;
  readonly to: number;
}

export interface FlatBend {
  readonly id: string;
  readonly direction: 'up' | 'down';
  /** Middle of the bend in the flat, mm from the strip's end. */
  readonly at: number;
}

export interface FlatPattern {
  readonly length: number;
  readonly legs: readonly Leg[];
  readonly bends: readonly FlatBend[];
  /** Length of each bent zone in the flat, mm. */
  readonly allowance: number;
  readonly setback: number;
  /** Inside radius that the flat was worked out with: a scored bend folds about its groove's floor. */
  readonly radius: number;
  /** Thickness at the bend: what the groove leaves of it. */
  readonly bentThickness: number;
}

type Shape = readonly { readonly id: string; readonly field: Leg['field']; readonly name: string }[];

const SHAPES: Readonly<
  Record<BentBracket['profile'], { readonly legs: Shape; readonly bends: readonly FlatBend['direction'][] }>
> = {
  L: {
    legs: [
      { id: 'legA', field: 'legA', name: 'first leg' },
      { id: 'legB', field: 'legB', name: 'second leg' },
    ],
    bends: ['up'],
  },
  U: {
    legs: [
      { id: 'legA', field: 'legA', name: 'first leg' },
      { id: 'middle', field: 'middle', name: 'base' },
      { id: 'legB', field: 'legB', name: 'second leg' },
    ],
    bends: ['up', 'up'],
  },
  Z: {
    legs: [
      { id: 'legA', field: 'legA', name: 'first leg' },
      { id: 'middle', field: 'middle', name: 'web' },
      { id: 'legB', field: 'legB', name: 'second leg' },
    ],
    bends: ['up', 'down'],
  },
  hat: {
    legs: [
      { id: 'flangeA', field: 'flange', name: 'first flange' },
      { id: 'legA', field: 'legA', name: 'first wall' },
      { id: 'middle', field: 'middle', name: 'top' },
      { id: 'legB', field: 'legB', name: 'second wall' },
      { id: 'flangeB', field: 'flange', name: 'second flange' },
    ],
    bends: ['up', 'down', 'down', 'up'],
  },
};

/** What a groove of `score` depth leaves to bend: a sharp fold about its floor; the bent legs are measured to it. */
const foldOf = (p: BentBracket): { readonly radius: number; readonly thickness: number } =>
  p.made === 'scored'
    ? { radius: 0, thickness: Math.max(p.thickness.mm - p.groove.mm, 0) }
    : { radius: p.radius.mm, thickness: p.thickness.mm };

/**
 * Legs and bends laid flat: each leg loses a setback for each bend beside it, each bend takes its allowance. A typed
 * allowance, measured on a trial strip, wins over the K factor.
 *
 * @example legs 50 and 40 in 3 mm, R 3, K 0.4: 44 + 6.597 + 34 = 84.597
 */
export function flatPatternOf(p: BentBracket): FlatPattern {
  const { legs, bends } = SHAPES[p.profile];
  const fold = foldOf(p);
  const allowance =
    p.allowance?.mm ?? bendAllowance(p.bend.value, fold.radius, fold.thickness, p.kFactor.value);
  const setback = outsideSetback(p.bend.value, fold.radius, fold.thickness);
  let at = 0;
  const laid = legs.map(({ id, field, name }, index): Leg => {
    const beside = (index > 0 ? 1 : 0) + (index < legs.length - 1 ? 1 : 0);
    const outside = p[field].mm;
    const straight = outside - beside * setback;
    const from = at;
    at += straight + (index < legs.length - 1 ? allowance : 0);
    return { id, field, name, outside, straight, from, to: from + straight };
  });
  return {
    length: at,
    legs: laid,
    bends: bends.map((direction, index) => ({
      id: `bend.${index + 1}`,
      direction,
      at: (laid[index]?.to ?? 0) + allowance / 2,
    })),
    allowance,
    setback,
    radius: fold.radius,
    bentThickness: fold.thickness,
  };
}
