// What a person may say about the cut: class, kerf, speed, pierce delay. Each is read with its unit and its bounds.
import type { FieldProblem } from '../parts/index.js';
import { readLength, readSpeed, readTime, type Reading, type Unit } from '../units/index.js';

/** As given: numbers are metric (mm, mm/min, s), texts are read in the job's unit. Left out: from the chart. */
export interface ProcessInput {
  readonly processClass?: string;
  readonly kerf?: number | string;
  readonly kerfPlusMinus?: number | string;
  readonly holeKerf?: number | string;
  readonly speed?: number | string;
  readonly pierceSeconds?: number | string;
}

/** As read: mm, mm/min, s. */
export interface GivenProcess {
  readonly processClass?: string;
  readonly kerf?: number;
  readonly kerfPlusMinus?: number;
  readonly holeKerf?: number;
  readonly speed?: number;
  readonly pierceSeconds?: number;
}

/** A figure of the cut that can be given: what it is, where it may lie, how it is read. */
export interface ProcessField {
  readonly name: Exclude<keyof ProcessInput, 'processClass'>;
  readonly title: string;
  readonly help: string;
  readonly measuring?: string;
  readonly unit: 'mm' | 'mm/min' | 's';
  readonly min: number;
  readonly max: number;
}

/** Wider than any hand-held or table plasma cuts, so that a slip of the decimal point is caught; mm. */
const WIDEST_KERF = 8;

export const PROCESS_FIELDS: readonly ProcessField[] = [
  {
    name: 'kerf',
    title: 'Kerf',
    help: 'Width of the cut. Left out: the chart value.',
    measuring:
      'Cut a slug of known programmed size without kerf; the kerf is programmed size less the slug measured across.',
    unit: 'mm',
    min: 0.1,
    max: WIDEST_KERF,
  },
  {
    name: 'kerfPlusMinus',
    title: 'Kerf ±',
    help: 'How well the kerf is known, half range. Left out: the chart value.',
    unit: 'mm',
    min: 0,
    max: 3,
  },
  {
    name: 'holeKerf',
    title: 'Hole kerf',
    help: 'Width of the cut in small round holes. Left out: the kerf as given, or 1.075 × the chart kerf.',
    measuring: 'Cut a ladder of holes, measure them at their smallest, and take the difference to the path.',
    unit: 'mm',
    min: 0.1,
    max: WIDEST_KERF,
  },
  {
    name: 'speed',
    title: 'Cutting speed',
    help: 'Along straight cuts; small holes are cut slower. Left out: the chart value.',
    unit: 'mm/min',
    min: 50,
    max: 30_000,
  },
  {
    name: 'pierceSeconds',
    title: 'Pierce delay',
    help: 'Wait between arc and travel. Left out: the chart value.',
    unit: 's',
    min: 0,
    max: 10,
  },
];

function read(field: ProcessField, input: number | string, unit: Unit): Reading<number> {
  if (field.unit === 's') return readTime(input);
  if (field.unit === 'mm/min') return readSpeed(input, { unit });
  const length =
    typeof input === 'number'
      ? readLength(`${input} mm`, { unit })
      : readLength(input, { unit, plusMinus: field.name === 'kerf' });
  return length.ok ? { ok: true, value: length.value.mm } : length;
}

/**
 * Reads what was given about the cut.
 * @param input anything; field names in problems start with `process.`
 * @param unit of bare numbers that are texts
 */
export function readProcess(
  input: unknown,
  unit: Unit,
): { readonly value: GivenProcess; readonly problems: readonly FieldProblem[] } {
  if (input === undefined) return { value: {}, problems: [] };
  if (typeof input !== 'object' || input === null || Array.isArray(input)) {
    return {
      value: {},
      problems: [{ field: 'process', says: 'The process is given as an object of named figures.' }],
    };
  }
  const given = new Map<string, unknown>(Object.entries(input).filter(([, value]) => value !== undefined));
  const problems: FieldProblem[] = [];
  const beside = plusMinusOf(given.get('kerf'), unit);
  if (beside !== undefined && given.has('kerfPlusMinus')) {
    problems.push({
      field: 'process.kerfPlusMinus',
      says: `Kerf ± is given twice: in the kerf "${String(given.get('kerf'))}" and by itself; give it once.`,
    });
  } else if (beside !== undefined) given.set('kerfPlusMinus', beside);
  const numbers: { [name in ProcessField['name']]?: number } = {};
  for (const field of PROCESS_FIELDS) {
    const value = given.get(field.name);
    given.delete(field.name);
    if (value === undefined) continue;
    const answer = readFigure(field, value, unit);
    if (typeof answer === 'number') numbers[field.name] = answer;
    else problems.push(answer);
  }
  const processClass = given.get('processClass');
  given.delete('processClass');
  if (processClass !== undefined && typeof processClass !== 'string') {
    problems.push({ field: 'process.processClass', says: 'The process class is a name such as air-45A.' });
  }
  for (const name of given.keys()) {
    problems.push({
      field: `process.${name}`,
      says: `There is no "${name}" of the process; accepted are processClass, ${PROCESS_FIELDS.map((one) => one.name).join(', ')}.`,
    });
  }
  return { value: { ...numbers, ...(typeof processClass === 'string' ? { processClass } : {}) }, problems };
}

/** The ± that was typed behind the kerf, mm. */
function plusMinusOf(kerf: unknown, unit: Unit): number | undefined {
  if (typeof kerf !== 'string') return undefined;
  const reading = readLength(kerf, { unit });
  return reading.ok ? reading.value.plusMinus : undefined;
}

function readFigure(field: ProcessField, value: unknown, unit: Unit): number | FieldProblem {
  const name = `process.${field.name}`;
  const accepted = `${field.min} to ${field.max} ${field.unit}`;
  if (typeof value !== 'number' && typeof value !== 'string') {
    return { field: name, says: `${field.title} is ${JSON.stringify(value)}; accepted is ${accepted}.` };
  }
  const reading = read(field, value, unit);
  if (!reading.ok) {
    return {
      field: name,
      says: `${field.title}: ${reading.problem.says} Accepted: ${reading.problem.accepts}`,
    };
  }
  if (reading.value >= field.min && reading.value <= field.max) return reading.value;
  return {
    field: name,
    says: `${field.title} is ${reading.value} ${field.unit} ("${value}"); accepted is ${accepted}.`,
  };
}
