// What a command comes to: its exit code, and what it says on either stream.

/** 0: done. 1: the program failed. 2: bad input. 3: a stop finding. */
export type ExitCode = 0 | 1 | 2 | 3;

export interface Outcome {
  readonly code: ExitCode;
  readonly out?: string;
  readonly err?: string;
}

/** One thing wrong with what was typed. */
export interface InputProblem {
  /** Dotted path of the parameter, or the name of the flag. */
  readonly field: string;
  readonly says: string;
  /** The flag that a person would correct. */
  readonly flag?: string;
}

/** Exactly one JSON object and a line end. */
export const asJson = (value: object): string => `${JSON.stringify(value, null, 2)}\n`;

/** Bad input: every problem with its flag, or the same as JSON on the output. */
export function badInput(problems: readonly InputProblem[], json: boolean): Outcome {
  const message =
    problems.length === 1 ? 'One value cannot be used.' : `${problems.length} values cannot be used.`;
  if (json)
    return { code: 2, out: asJson({ error: { exitCode: 2, code: 'bad-input', message, errors: problems } }) };
  const lines = problems.map(({ field, flag, says }) => `  ${flag ?? field}: ${says}\n`);
  return { code: 2, err: `fishplate: ${message}\n${lines.join('')}` };
}

/** A failure of the program or of the machine under it. */
export function failed(message: string, json: boolean): Outcome {
  return json
    ? { code: 1, out: asJson({ error: { exitCode: 1, code: 'failed', message } }) }
    : { code: 1, err: `fishplate: ${message}\n` };
}
