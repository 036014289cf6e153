// A drive as a person reads it on a terminal: numbers under their headings, lengths of chain, other sprockets, findings.
import { createWords, shareText, type Figure } from '../../parts-library/drive/index.js';
import { createFormat } from '../../parts-library/job/index.js';
import { writeDecimal } from '../../parts-library/units/index.js';
import type { DriveRun } from '../drive.js';
import { entry } from './layout.js';
import { findingsText } from './report.js';

const COLUMN = 46;

type Cells = readonly string[];

/** Rows under their headings, every column as wide as its widest cell; numbers stand to the right. */
function table(heading: Cells, rows: readonly Cells[]): string {
  const all = [heading, ...rows];
  const widths = heading.map((_, column) => Math.max(...all.map((row) => (row[column] ?? '').length)));
  const written = all.map((row) => row.map((cell, column) => cell.padStart(widths[column] ?? 0)).join('  '));
  return written.map((text) => `  ${text.trimEnd()}\n`).join('');
}

function figuresText(figures: readonly Figure[]): string {
  const groups = [...new Set(figures.map(({ group }) => group))];
  return groups
    .map(
      (group) =>
        `${group}\n${figures
          .filter((figure) => figure.group === group)
          .map(({ title, text }) => entry(title, text, COLUMN))
          .join('')}\n`,
    )
    .join('');
}

function candidatesText({ candidates, unit, chain }: DriveRun): string {
  if (candidates.length === 0) return '';
  const { bare } = createFormat(unit);
  const rows = candidates.map((one) => [
    one.name,
    bare(one.pitch),
    bare(one.roller),
    bare(one.innerWidth),
    one.wearPercent === undefined ? '' : `${writeDecimal(one.wearPercent, 2)} %`,
    one.fits ? (one.name === chain?.name ? 'fits, counted with' : 'fits') : 'does not fit',
  ]);
  return `Chains by what was measured, ${unit}\n${table(['chain', 'pitch', 'roller', 'width', 'longer', ''], rows)}\n`;
}

function linksText({ linkChoices, unit }: DriveRun): string {
  if (linkChoices.length === 0) return '';
  const { length } = createFormat(unit);
  const rows = linkChoices.map(({ links, centres, moves }) => [
    String(links),
    length(centres),
    moves === undefined ? '' : `${moves > 0 ? '+' : ''}${length(moves)}`,
    links % 2 === 0 ? '' : 'offset link',
  ]);
  return `Lengths of chain\n${table(['links', 'centres', 'moves', ''], rows)}\n`;
}

function changesText({ changes, unit }: DriveRun): string {
  const { bare, force, roadSpeed } = createWords(createFormat(unit));
  const [now] = changes;
  const rows = changes.map((one) => [
    `${one.motorTeeth}/${one.wheelTeeth}`,
    writeDecimal(one.chainRatio, 2),
    one === now ? '' : `${one.speed >= 1 ? '+' : '−'}${shareText(Math.abs(one.speed - 1))}`,
    one.roadSpeed === undefined ? '' : roadSpeed(one.roadSpeed),
    one.groundNewtons === undefined ? '' : force(one.groundNewtons),
    one.sameLinks === undefined ? '' : bare(one.sameLinks.centres),
    one.sameCentres === undefined ? '' : `${one.sameCentres.links} at ${bare(one.sameCentres.centres)}`,
    one.climbs === undefined ? '' : one.climbs ? 'yes' : 'no',
  ]);
  const heading = [
    'teeth',
    'ratio',
    'speed',
    'road speed',
    'pull',
    `same links, ${unit}`,
    `even links, ${unit}`,
    'climbs',
  ];
  // Columns that nothing is known for are left out.
  const kept = heading.map((_, column) => rows.some((row) => row[column] !== ''));
  const keep = (row: Cells): Cells => row.filter((_, column) => kept[column] === true);
  return `Other sprockets, motor/wheel; the first is the drive as it is\n${table(keep(heading), rows.map(keep))}\n`;
}

/** The whole report. */
export function driveText(run: DriveRun): string {
  const { chain } = run;
  const counted =
    chain === undefined
      ? ''
      : `Chain ${chain.name}, by its ${chain.from === 'name' ? 'number' : 'sizes'}\n\n`;
  return `${counted}${figuresText(run.figures)}${candidatesText(run)}${linksText(run)}${changesText(run)}${findingsText(run.findings)}`;
}
