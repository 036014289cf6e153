// `fishplate drive`: the numbers of a chain drive, from the motor's sprocket to the top of the hill.
import { driveReader } from '../../parts-library/drive/index.js';
import { guardJson, isObject } from '../../parts-library/job/index.js';
import type { JsonObject } from '../../parts-library/model/index.js';
import { runDrive } from '../drive.js';
import { driveText } from './drive-report.js';
import { readFlags } from './flags.js';
import { driveHelp } from './help.js';
import { asJson, badInput, type InputProblem, type Outcome } from './outcome.js';
import { readParameters } from './parameter-file.js';
import { flagOfField, flagsOfDrive } from './part-flags.js';
import { oneOf, textOf, typedOver } from './part-request.js';

/** The object of a parameter file; a whole request has it under `parameters`. */
function parametersOf(file: unknown, problems: InputProblem[]): JsonObject {
  if (file === undefined) return {};
  const guarded = guardJson(file);
  if (guarded.ok && isObject(guarded.value)) {
    const { parameters } = guarded.value;
    return isObject(parameters) ? parameters : guarded.value;
  }
  problems.push({
    field: 'params',
    flag: '--params',
    says: guarded.ok
      ? 'The file holds no JSON object; accepted is one of parameters by name.'
      : `${guarded.problem.path}: ${guarded.problem.says}`,
  });
  return {};
}

/** Runs the command on the arguments behind `drive`. A stop finding exits 3, as everywhere. */
export async function driveCommand(args: readonly string[]): Promise<Outcome> {
  const json = args.includes('--json');
  const { fields } = driveReader;
  const { values, positionals, problems: slips } = readFlags(args, flagsOfDrive(fields));
  if (values.has('help')) return { code: 0, out: driveHelp(fields) };
  const file = await readParameters(textOf(values, 'params'));
  const problems: InputProblem[] = [
    ...slips,
    ...positionals.map((word) => ({
      field: 'arguments',
      says: `"${word}" stands alone. A value with blanks needs quotes, for example --motor-torque "38 N·m".`,
    })),
    ...file.problems,
  ];
  const unit = oneOf(values, 'unit', ['mm', 'in'] as const, problems) ?? 'mm';
  const parameters = typedOver(parametersOf(file.value, problems), fields, values);
  if (problems.length > 0) return badInput(problems, json);
  const ran = runDrive(parameters, unit);
  if (!ran.ok) {
    return badInput(
      ran.problems.map((problem) => ({ ...problem, flag: flagOfField(problem.field) })),
      json,
    );
  }
  const stops = ran.value.findings.filter(({ level }) => level === 'stop').map(({ title }) => title);
  const code = stops.length === 0 ? 0 : 3;
  const message = stops.join('. ');
  if (json) {
    const error = code === 0 ? {} : { error: { exitCode: code, code: 'stop-finding', message } };
    return { code, out: asJson({ ...error, ...ran.value }) };
  }
  return {
    code,
    out: driveText(ran.value),
    ...(code === 0 ? {} : { err: `fishplate: ${message}.\n` }),
  };
}
