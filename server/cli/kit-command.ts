// `fishplate kit KIT`: several parts from one set of numbers, each drawn, checked and written into a folder.
import { partFiles, runKit, startingShop, summarise, type KitRun } from '../../parts-library/job/index.js';
import { findKit, listKits } from '../../parts-library/kits/index.js';
import { nearestOf, readFlags } from './flags.js';
import { kitHelp } from './help.js';
import { asJson, badInput, type InputProblem, type Outcome } from './outcome.js';
import { flagOfField, flagsOfKit } from './part-flags.js';
import { oneOf, textOf, typedOver } from './part-request.js';
import { filesText, findingsText, kitText } from './report.js';
import { writeFiles, WriteProblem, type WrittenPath } from './write-files.js';

/** Runs the command on the arguments behind `kit`. */
export async function kitCommand(args: readonly string[]): Promise<Outcome> {
  const json = args.includes('--json');
  const [id, ...rest] = args;
  const ids = listKits().map((one) => one.id);
  const kit = id === undefined ? undefined : findKit(id);
  if (kit === undefined) {
    const nearest = id === undefined ? undefined : nearestOf(id, ids);
    const hint = nearest === undefined ? '' : ` Did you mean ${nearest}?`;
    const says =
      id === undefined || id.startsWith('-')
        ? `Name the kit: ${ids.join(', ')}.`
        : `There is no kit "${id}"; there are ${ids.join(', ')}.${hint}`;
    return badInput([{ field: 'kit', says }], json);
  }
  const { values, positionals, problems: slips } = readFlags(rest, flagsOfKit(kit));
  if (values.has('help')) return { code: 0, out: kitHelp(kit) };
  const problems: InputProblem[] = [
    ...slips,
    ...positionals.map((word) => ({
      field: 'arguments',
      says: `"${word}" stands alone. A value with blanks needs quotes, for example --bolt-circle "adjacent 55 ±0.1".`,
    })),
  ];
  const unit = oneOf(values, 'unit', ['mm', 'in'] as const, problems) ?? 'mm';
  const dxf = oneOf(values, 'dxf', ['r12', 'r2000'] as const, problems) ?? 'r12';
  const dxfUnit = oneOf(values, 'dxf-unit', ['mm', 'in'] as const, problems) ?? 'mm';
  if (problems.length > 0) return badInput(problems, json);
  const ran = runKit(kit.id, typedOver({}, kit.fields, values), unit, startingShop);
  if (!ran.ok) {
    return badInput(
      ran.problems.map((problem) => ({ ...problem, flag: flagOfField(problem.field) })),
      json,
    );
  }
  const despiteFindings = values.has('despite-findings');
  const made = ran.value.members.map((member) => ({
    member,
    files: partFiles(member.run, {
      dxf,
      unit: dxfUnit,
      despiteFindings,
      baseName: `${kit.id}.${member.role}`,
    }),
  }));
  const stops = ran.value.findings.filter(({ level }) => level === 'stop').map(({ title }) => title);
  const withheld = [
    ...(despiteFindings ? [] : stops),
    ...made.flatMap(({ member, files }) => (files.ok ? [] : [`${member.name}: ${files.says}`])),
  ];
  const out = textOf(values, 'out');
  let written: readonly WrittenPath[] = [];
  // A kit is written whole or not at all: half of one is found out at the welding table.
  if (out !== undefined && withheld.length === 0) {
    try {
      written = await writeFiles(
        out,
        made.flatMap(({ files }) => (files.ok ? files.files : [])),
      );
    } catch (error) {
      if (error instanceof WriteProblem)
        return badInput([{ field: 'out', flag: '--out', says: error.message }], json);
      throw error;
    }
  }
  return report(ran.value, { json, withheld, written, asked: out !== undefined });
}

function report(
  kit: KitRun,
  {
    json,
    withheld,
    written,
    asked,
  }: {
    readonly json: boolean;
    readonly withheld: readonly string[];
    readonly written: readonly WrittenPath[];
    readonly asked: boolean;
  },
): Outcome {
  const code = withheld.length === 0 ? 0 : 3;
  const message =
    code === 0
      ? undefined
      : `Nothing was written: ${withheld.join(' ')} Mend what the findings name, or add --despite-findings.`;
  if (json) {
    const members = kit.members.map(({ role, name, quantity, run }) => ({
      role,
      name,
      quantity,
      ...(summarise(run) ?? { findings: run.findings }),
    }));
    const { numbers, derived, findings } = kit;
    return {
      code,
      out: asJson({
        ...(message === undefined ? {} : { error: { exitCode: code, code: 'stop-finding', message } }),
        numbers,
        derived,
        findings,
        members,
        files: written,
      }),
    };
  }
  const tail =
    written.length > 0
      ? filesText(written)
      : asked || message !== undefined
        ? ''
        : '\nNo files were asked for; add --out DIR to write them.\n';
  const out = `${kitText(kit)}\nTogether\n${findingsText(kit.findings)}${tail}`;
  return { code, out, ...(message === undefined ? {} : { err: `fishplate: ${message}\n` }) };
}
