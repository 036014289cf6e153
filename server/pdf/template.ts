// The paper template of a part as files: one PDF for the printer, and its pages as SVG.
import { templatePages, templateSvgs, type PartRun } from '../../parts-library/job/index.js';
import type { TemplatePaper } from '../../parts-library/drawing/index.js';
import { writeDisplayPdf } from './display-pdf.js';

/** Papers that a template is made for. */
export const PAPERS = ['a4', 'letter'] as const satisfies readonly TemplatePaper[];

/** The template as one PDF. */
export const templatePdf = (run: PartRun, paper: TemplatePaper): Promise<Uint8Array> =>
  writeDisplayPdf(templatePages(run, paper), `${run.value?.part.name ?? run.family}, paper template`);

/**
 * The PDF and its pages as SVG, under one name.
 * @param base start of the names, safe for files
 */
export async function templateFiles(
  run: PartRun,
  paper: TemplatePaper,
  base: string,
): Promise<readonly { readonly name: string; readonly text: string | Uint8Array }[]> {
  const pages = templateSvgs(run, paper);
  return [
    { name: `${base}.template.pdf`, text: await templatePdf(run, paper) },
    ...pages.map((text, index) => ({
      name: `${base}.template${pages.length === 1 ? '' : `-${index + 1}`}.svg`,
      text,
    })),
  ];
}
