// A run as a person reads it on a terminal: part, cut, findings, what is done by hand, files.
import { createFormat, type KitRun, type RunSummary } from '../../parts-library/job/index.js';
import type { Finding, Level, ShopStep } from '../../parts-library/model/index.js';
import {
  writeClock,
  writeDecimal,
  writeLength,
  writeMass,
  writeSpeed,
  type Unit,
} from '../../parts-library/units/index.js';
import { entry, paragraph } from './layout.js';
import type { WrittenPath } from './write-files.js';

const COLUMN = 16;
/** mm² in a square inch: 25.4² (international inch). */
const SQUARE_INCH = 645.16;

const line = (name: string, text: string): string => entry(name, text, COLUMN);

const area = (squareMillimetres: number, unit: Unit): string =>
  unit === 'mm'
    ? `${writeDecimal(squareMillimetres, 1)} mm²`
    : `${writeDecimal(squareMillimetres / SQUARE_INCH, 3)} in²`;

/** The part and its openings at finished size. */
function partText({ part, derived, unit }: RunSummary): string {
  const { length } = createFormat(unit);
  const openings = new Map<string, number>();
  for (const { name, diameter, area: size } of part.openings) {
    const words = `${name.replace(/ \d+$/, '')} ${diameter === undefined ? area(size, unit) : `⌀${length(diameter)}`}`;
    openings.set(words, (openings.get(words) ?? 0) + 1);
  }
  return [
    `${part.name} (${part.family})\n`,
    line('plate', `${part.material}, ${length(part.thickness)} thick, ${part.quantity} wanted`),
    line('size', `${length(part.bounds.width)} × ${length(part.bounds.height)}`),
    ...derived.map(({ title, text }) => line(title, text)),
    ...[...openings].map(([words, count], index) =>
      line(index === 0 ? 'openings' : '', count === 1 ? words : `${count} × ${words}`),
    ),
    ...(part.marks.length === 0 ? [] : [line('centre marks', `${part.marks.length}`)]),
    line('net area', area(part.area, unit)),
    line('edges', `${length(part.perimeter)} (outline and openings, finished)`),
    line('mass', writeMass(part.mass, { unit })),
  ].join('');
}

/** Chart speed, and the slower speeds of holes with how many contours take each. */
function speedsText({ speed, contours }: RunSummary['cut'], unit: Unit): string {
  const slower = new Map<number, number>();
  for (const contour of contours) {
    const rounded = Math.round(contour.speed);
    if (rounded !== Math.round(speed)) slower.set(rounded, (slower.get(rounded) ?? 0) + 1);
  }
  const rest = [...slower].map(([own, count]) => `${writeSpeed(own, { unit })} in ${count} of the openings`);
  return [writeSpeed(speed, { unit }), ...rest].join(', ');
}

/** What the torch does. */
function cutText({ cut, unit }: RunSummary): string {
  const { length, lengthWithin } = createFormat(unit);
  const { low, high } = cut.secondsRange;
  return [
    'Cut\n',
    line(
      'settings',
      `${cut.processClass}, kerf ${lengthWithin(cut.kerf, cut.kerfPlusMinus)}, in small holes ${length(cut.holeKerf)}`,
    ),
    line('', `${speedsText(cut, unit)}, pierce ${writeDecimal(cut.pierceSeconds, 2)} s`),
    line('cut length', `${length(cut.length)} (openings and outline, kerf in)`),
    line('lead-ins', `${length(cut.leadInLength)} beside it`),
    ...(cut.lineLength === 0 ? [] : [line('lines', `${length(cut.lineLength)} scored or etched, beside it`)]),
    line('pierces', `${cut.pierces}${cut.marks === 0 ? '' : `, and ${cut.marks} centre marks`}`),
    line(
      'torch on',
      `${writeClock(low)} to ${writeClock(high)} min, likely ${writeClock(cut.seconds)}; travel is not in it`,
    ),
  ].join('');
}

const LEVEL_WORDS: Readonly<Record<Exclude<Level, 'pass'>, string>> = {
  stop: 'STOP',
  caution: 'CAUTION',
  note: 'note',
};

/** Findings, worst first; passed checks fold into one line. */
export function findingsText(findings: readonly Finding[]): string {
  const shown = findings.flatMap(({ level, title, says, formula, source }) =>
    level === 'pass'
      ? []
      : [
          entry(LEVEL_WORDS[level], title, COLUMN),
          paragraph(says, COLUMN),
          ...(formula === undefined ? [] : [paragraph(formula, COLUMN)]),
          paragraph(`[${source.title}, ${source.where}; ${source.certainty}]`, COLUMN),
        ],
  );
  const passed = new Set(findings.filter(({ level }) => level === 'pass').map(({ code }) => code));
  const fold = passed.size === 0 ? '' : entry('passed', [...passed].join(', '), COLUMN);
  return `Findings\n${shown.join('')}${fold}`;
}

const stepsText = (steps: readonly ShopStep[]): string =>
  steps.length === 0
    ? ''
    : `\nOperations\n${steps.map(({ kind, says }) => entry(kind, says, COLUMN)).join('')}`;

/** `4 × M8 × 25 hexagon bolt, 8.8`, with the sawn length and what to know about it. */
function hardwareText({ hardware, unit }: RunSummary): string {
  if (hardware.length === 0) return '';
  const { length } = createFormat(unit);
  const lines = hardware.map((item) => {
    const sawn = item.length === undefined ? '' : `, sawn ${length(item.length)}`;
    const says = item.says === undefined ? '' : `: ${item.says}`;
    return entry(item.kind, `${item.quantity} × ${item.name}${sawn}${says}`, COLUMN);
  });
  return `\nHardware and saw list\n${lines.join('')}`;
}

/** The whole report. */
export function reportText(summary: RunSummary): string {
  return `${partText(summary)}\n${cutText(summary)}\n${findingsText(summary.findings)}${stepsText(summary.steps)}${hardwareText(summary)}`;
}

/** A kit: what follows from its numbers, and each member in a line with what stands in its way. */
export function kitText({ derived, members }: KitRun): string {
  const gives = derived.map(({ title, text }) => line(title, text)).join('');
  const parts = members.map(({ name, quantity, run }) => {
    const { value, findings } = run;
    const worst = findings.filter(({ level }) => level === 'stop' || level === 'caution');
    const size =
      value === undefined
        ? 'not drawn'
        : `${writeLength(value.part.thickness, { unit: run.unit })} ${value.part.material}, ${writeMass(value.mass, { unit: run.unit, decimals: 3 })} each`;
    return [
      line(name, `${quantity} × ${size}`),
      ...worst.map(({ level, title }) => line('', `${level === 'stop' ? 'STOP' : 'CAUTION'} ${title}`)),
    ].join('');
  });
  return `${gives}${gives === '' ? '' : '\n'}Members\n${parts.join('')}`;
}

export const filesText = (files: readonly WrittenPath[]): string =>
  `\nFiles\n${files.map(({ path, bytes }) => `  ${path}  (${bytes} bytes)\n`).join('')}`;
