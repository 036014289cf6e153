// `fishplate part FAMILY`: draws, checks and plans one part, reports it and writes its files.
import { readdir } from 'node:fs/promises';
import { safeBaseName } from '../../parts-library/files/index.js';
import { partFiles, runPart, startingShop, summarise, type PartRun } from '../../parts-library/job/index.js';
import { findFamily, listFamilies } from '../../parts-library/parts/index.js';
import { nearestOf, readFlags } from './flags.js';
import { familyHelp } from './help.js';
import { asJson, badInput, type Outcome } from './outcome.js';
import { readParameters } from './parameter-file.js';
import { flagOfField, flagsOf } from './part-flags.js';
import { askedPart, textOf, type AskedPart } from './part-request.js';
import { filesText, findingsText, reportText } from './report.js';
import { writeFiles, WriteProblem, type FileToWrite, type WrittenPath } from './write-files.js';

/** Runs the command on the arguments behind `part`. */
export async function partCommand(args: readonly string[]): Promise<Outcome> {
  const json = args.includes('--json');
  const [id, ...rest] = args;
  const ids = listFamilies().map((one) => one.id);
  if (id === undefined || id.startsWith('-')) {
    return badInput([{ field: 'family', says: `Name the part family: ${ids.join(', ')}.` }], json);
  }
  const family = findFamily(id);
  if (family === undefined) {
    const nearest = nearestOf(id, ids);
    const hint = nearest === undefined ? '' : ` Did you mean ${nearest}?`;
    return badInput(
      [{ field: 'family', says: `There is no part family "${id}"; there are ${ids.join(', ')}.${hint}` }],
      json,
    );
  }
  const flags = readFlags(rest, flagsOf(family));
  if (flags.values.has('help')) return { code: 0, out: familyHelp(family) };
  const file = await readParameters(textOf(flags.values, 'params'));
  const asked = askedPart(family, flags.values, file.value);
  const stray = flags.positionals.map((word) => ({
    field: 'arguments',
    says: `"${word}" stands alone. A value with blanks needs quotes, for example --bolt-circle "adjacent 55 ±0.1".`,
  }));
  const problems = [...flags.problems, ...stray, ...file.problems, ...asked.problems];
  if (problems.length > 0) return badInput(problems, json);
  const run = runPart(asked.request, startingShop);
  if (run.problems.length > 0) {
    return badInput(
      run.problems.map((problem) => ({ ...problem, flag: flagOfField(problem.field) })),
      json,
    );
  }
  return finish(run, asked, {
    json,
    out: textOf(flags.values, 'out'),
    despiteFindings: flags.values.has('despite-findings'),
  });
}

/** How the answer is given. */
export interface Finish {
  readonly json: boolean;
  readonly out: string | undefined;
  readonly despiteFindings: boolean;
  /** Said before the report, and as JSON beside it: what was read before the part was drawn. */
  readonly before?: { readonly text: string; readonly json: object };
}

/** Cut files of an earlier run under the same name: they would be taken for this part's. */
async function olderCutFiles(
  folder: string,
  family: string,
  name: string | undefined,
): Promise<readonly string[]> {
  const base = safeBaseName(name ?? family);
  const there = await readdir(folder).catch(() => []);
  return there.filter((file) => file === `${base}.cut.dxf` || file === `${base}.cut.svg`);
}

/** The paper template, where one is asked for; its PDF writer is loaded only then. */
async function templateOf(run: PartRun, { template, request }: AskedPart): Promise<readonly FileToWrite[]> {
  if (template === undefined) return [];
  const { templateFiles } = await import('../pdf/template.js');
  return templateFiles(run, template, safeBaseName(request.name ?? run.family));
}

/** Writes what may be written, and says what came of it. */
export async function finish(
  run: PartRun,
  asked: AskedPart,
  { json, out, despiteFindings, before }: Finish,
): Promise<Outcome> {
  const summary = summarise(run);
  const { name } = asked.request;
  const files = partFiles(run, {
    dxf: asked.dxf,
    unit: asked.dxfUnit,
    despiteFindings,
    ...(name === undefined ? {} : { baseName: name }),
  });
  const withheld = files.ok ? files.withoutCut : files.says;
  let written: readonly WrittenPath[] = [];
  if (files.ok && out !== undefined) {
    try {
      written = await writeFiles(out, [...files.files, ...(await templateOf(run, asked))]);
    } catch (error) {
      if (error instanceof WriteProblem)
        return badInput([{ field: 'out', flag: '--out', says: error.message }], json);
      throw error;
    }
  }
  const code = withheld === undefined ? 0 : 3;
  const hint =
    !files.ok && summary !== undefined
      ? 'Nothing was written. Mend what the findings name, or add --despite-findings.'
      : 'Nothing was written.';
  const older = out === undefined || withheld === undefined ? [] : await olderCutFiles(out, run.family, name);
  const warning =
    older.length === 0
      ? ''
      : ` Beware: ${older.join(' and ')} from an earlier run still stands there and is not of this part.`;
  const message =
    withheld === undefined ? undefined : `${files.ok ? withheld : `${withheld} ${hint}`}${warning}`;
  if (json) {
    return {
      code,
      out: asJson({
        ...(message === undefined ? {} : { error: { exitCode: code, code: 'stop-finding', message } }),
        ...before?.json,
        ...(summary ?? { findings: run.findings }),
        files: written,
      }),
    };
  }
  const report = summary === undefined ? findingsText(run.findings) : reportText(summary);
  const tail =
    written.length > 0
      ? filesText(written)
      : message === undefined
        ? '\nNo files were asked for; add --out DIR to write them.\n'
        : '';
  return {
    code,
    out: `${before?.text ?? ''}${report}${tail}`,
    ...(message === undefined ? {} : { err: `fishplate: ${message}\n` }),
  };
}
