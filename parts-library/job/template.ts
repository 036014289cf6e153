// The paper template of a run: pages at true size, as display lists and as SVG.
import { drawTemplate, writeDisplaySvg, type DisplayList, type TemplatePaper } from '../drawing/index.js';
import type { PartRun } from './run-part.js';

/** Pages of the template; none when the run has no part. */
export function templatePages(run: PartRun, paper: TemplatePaper): readonly DisplayList[] {
  if (run.value === undefined) return [];
  const { part, process } = run.value;
  const { format } = process.facts;
  const title = `${part.name}, ${format.length(part.thickness)} ${part.material}: paper template`;
  return drawTemplate(part, paper, { title, length: format.bare });
}

/** The pages as SVG documents in mm. */
export const templateSvgs = (run: PartRun, paper: TemplatePaper): readonly string[] =>
  templatePages(run, paper).map((page) => writeDisplaySvg(page, { unit: 'mm', theme: 'print' }));
