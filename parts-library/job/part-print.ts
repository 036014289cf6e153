// The print of a run on paper: title block, numbered notes, and the drawing, as SVG at true size.
import { drawPrint, writeDisplaySvg, type SheetNote, type TitleBlock } from '../drawing/index.js';
import type { Finding } from '../model/index.js';
import { writeClock, writeLength, writeMass, type Unit } from '../units/index.js';
import type { PartRun, PartValue } from './run-part.js';

/** ISO 216 A4 landscape, mm. */
const A4 = { width: 297, height: 210 } as const;

/** Findings that a print numbers: all but passed checks, worst first. */
export function notesOf(findings: readonly Finding[]): readonly SheetNote[] {
  return findings
    .filter(({ level }) => level !== 'pass')
    .map(({ level, title, says, source }, index) => ({
      number: index + 1,
      level,
      title,
      says,
      source: `${source.title}, ${source.where} (${source.certainty})`,
    }));
}

/**
 * The words of a print's title block (ISO 7200).
 * @param job name of the job it belongs to; empty for a part of its own
 */
export function titleBlockOf(value: PartValue, unit: Unit, job: string): TitleBlock {
  const { part, figures, mass } = value;
  const decimals = unit === 'mm' ? 2 : 3;
  return {
    part: part.name,
    job,
    material: part.material,
    thickness: writeLength(part.thickness, { unit, decimals }),
    quantity: String(part.quantity),
    mass: writeMass(mass, { unit, decimals: 2 }),
    cutLength: writeLength(figures.length, { unit, decimals: unit === 'mm' ? 0 : 1 }),
    pierces: String(figures.pierces),
    marks: String(figures.marks),
    time: `${writeClock(figures.seconds.low)} to ${writeClock(figures.seconds.high)}`,
  };
}

/**
 * The print of a part on A4 as an SVG document in mm.
 * @returns undefined when the run has no value
 */
export function printOf(run: PartRun, job = ''): string | undefined {
  if (run.value === undefined) return undefined;
  const { part, dimensions, ghosts } = run.value;
  const list = drawPrint({
    part,
    dimensions,
    ghosts,
    findings: run.findings,
    size: A4,
    frame: 'sheet',
    unit: run.unit,
    title: titleBlockOf(run.value, run.unit, job),
    notes: notesOf(run.findings),
  });
  return writeDisplaySvg(list, { unit: 'mm', theme: 'print' });
}
