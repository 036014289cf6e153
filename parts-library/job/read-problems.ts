// Problems of parameters in full words: what the field is, what was given, what is accepted.
import type { Family, Field, FieldProblem } from '../parts/index.js';

/** Words of the schema library for a value of the wrong kind; they say nothing about the field. */
const BARE = /^(Invalid|Too (big|small)|Unrecognized)/;

const EXAMPLES: Readonly<Record<Field['kind'], string>> = {
  length: 'a length such as 35, "1-3/8 in" or "57.1 ±0.1"',
  lengths: 'a list of lengths such as "6, 3 × 2, 1.5"',
  measure: 'a measure such as 110, "adjacent 55.84 ±0.1" or "across 95"',
  count: 'a whole number',
  angle: 'an angle in degrees',
  percent: 'a percentage',
  torque: 'a torque such as 40 or "30 lbf·ft"',
  force: 'a force such as 1200 or "270 lbf"',
  mass: 'a mass such as 250 or "550 lb"',
  rotation: 'a speed of turning such as 1500 or "25 rev/s"',
  speed: 'a speed such as 2500 or "100 in/min"',
  time: 'a time such as 0.5 or "500 ms"',
  material: 'a grade such as "S275"',
  chain: 'a chain such as "428" or "08B"',
  thread: 'a thread such as "M10" or "3/8-16"',
  holes: '"clearance", "tapped", "drill" or a diameter',
  choice: 'one of its choices',
  text: 'a plain text',
  factor: 'a number',
  drawing: 'a drawing as bringing in a DXF or SVG file gives it',
  group: 'an object of the parameters in that group',
};

/**
 * Rewords the problems that a schema words only by type.
 * @param parameters what was given
 */
export function wordProblems(
  problems: readonly FieldProblem[],
  family: Pick<Family, 'fields'>,
  parameters: unknown,
): readonly FieldProblem[] {
  return problems.map((problem) => {
    if (!BARE.test(problem.says)) return problem;
    if (problem.field === '') {
      return { field: 'parameters', says: 'The parameters are given as an object of named values.' };
    }
    const field = family.fields.find(
      ({ path }) => problem.field === path || problem.field.startsWith(`${path}.`),
    );
    if (field === undefined) return problem;
    const given = problem.field.split('.').reduce<unknown>(memberOf, parameters);
    return {
      field: problem.field,
      says: `${field.title} is ${show(given)}; accepted is ${acceptedBy(field)}.`,
    };
  });
}

function acceptedBy({ kind, choices, min, max }: Field): string {
  if (choices !== undefined) return choices.map(({ value }) => value).join(', ');
  const range = min === undefined || max === undefined ? '' : `, ${min} to ${max}`;
  return EXAMPLES[kind] + range;
}

const memberOf = (value: unknown, name: string): unknown =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, name)
    ? new Map<string, unknown>(Object.entries(value)).get(name)
    : undefined;

/** A value short enough to stand in a sentence. */
function show(value: unknown): string {
  const text = typeof value === 'number' && !Number.isFinite(value) ? String(value) : JSON.stringify(value);
  if (text === undefined) return 'missing';
  return text.length <= 60 ? text : `${text.slice(0, 57)}...`;
}
