// The same circle measured another way: what the caliper would read, so that a person only has to type over a number.
import { boltCircleFrom, chordFactor } from '../../parts-library/handbook/index.js';
import {
  readMeasure,
  writeMeasure,
  type Measure,
  type Tagged,
  type Unit,
} from '../../parts-library/units/index.js';

export interface Way {
  /** As it is typed. */
  readonly tag: string;
  readonly label: string;
}

const ADJACENT: Way = { tag: 'adjacent', label: 'adjacent holes, centres' };
const SECOND: Way = { tag: 'every-2nd', label: 'every second hole, centres' };
const ACROSS: Way = { tag: 'across', label: 'opposite holes, centres' };

/** The ways that a pattern of so many holes can be measured by one distance. */
export function waysFor(holeCount: number): readonly Way[] {
  return [
    { tag: 'circle', label: 'circle' },
    ADJACENT,
    ...(holeCount >= 5 ? [SECOND] : []),
    { tag: 'near-edges', label: 'adjacent holes, near edges' },
    { tag: 'far-edges', label: 'adjacent holes, far edges' },
    ...(holeCount % 2 === 0 ? [ACROSS] : []),
  ];
}

function readingAs(tag: string, diameter: number, holeCount: number, hole: number): Tagged | undefined {
  const chord = (step: number): number => diameter / chordFactor(holeCount, step);
  switch (tag) {
    case 'circle':
      return { way: 'circle', diameter };
    case 'adjacent':
      return { way: 'steps', step: 1, distance: chord(1) };
    case 'every-2nd':
      return { way: 'steps', step: 2, distance: chord(2) };
    case 'near-edges':
      return { way: 'edges', side: 'near', step: 1, distance: chord(1) - hole, hole: { mm: hole } };
    case 'far-edges':
      return { way: 'edges', side: 'far', step: 1, distance: chord(1) + hole, hole: { mm: hole } };
    case 'across':
      return { way: 'across', side: 'centres', distance: diameter };
    default:
      return undefined;
  }
}

/**
 * A measured pattern written another way, the circle kept to a thousandth.
 *
 * @param metric the pattern as it stands, in millimetres
 * @param hole diameter of its holes, mm, for the ways that go from edge to edge
 * @returns undefined when the pattern gives no circle or the way is none of `waysFor`
 * @example measuredAs('circle 95 mm', 'adjacent', { holeCount: 5, hole: 9, unit: 'mm' }) // 'adjacent 55.84 mm'
 */
export function measuredAs(
  metric: string,
  tag: string,
  of: { readonly holeCount: number; readonly hole: number; readonly unit: Unit },
): string | undefined {
  const now = readMeasure(metric, { unit: 'mm' });
  const answer = now.ok ? boltCircleFrom(now.value, of.holeCount) : undefined;
  if (answer?.ok !== true) return undefined;
  const reading = readingAs(tag, answer.value.diameter, of.holeCount, of.hole);
  if (reading === undefined) return undefined;
  const measure: Measure = { typed: '', readings: [reading] };
  return writeMeasure(measure, of.unit, of.unit === 'mm' ? 3 : 4);
}

/** The way in which a pattern is written now, when it is one of `waysFor`. */
export function wayOf(metric: string): string | undefined {
  const now = readMeasure(metric, { unit: 'mm' });
  if (!now.ok || now.value.readings.length !== 1) return undefined;
  const [tag = ''] = metric.split(' ');
  return tag;
}
