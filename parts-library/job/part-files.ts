// The files of one part: finished size and cut path as DXF and SVG, and the print. Stops withhold them.
import {
  safeBaseName,
  writeCutDxf,
  writeCutSvg,
  writeFinishedDxf,
  writeFinishedSvg,
} from '../files/index.js';
import { isCut, type Finding } from '../model/index.js';
import type { Unit } from '../units/index.js';
import { isOverridden } from './overrides.js';
import { printOf } from './part-print.js';
import type { PartRun, PartValue } from './run-part.js';
import type { Override } from './types.js';

export interface PartFile {
  /** Without folder, for example `adapter-plate.cut.dxf`. */
  readonly name: string;
  readonly kind: 'finished' | 'cut' | 'print';
  readonly mediaType: 'image/vnd.dxf' | 'image/svg+xml';
  readonly text: string;
}

export interface PartFilesOptions {
  readonly dxf?: 'r12' | 'r2000';
  /** Unit of the DXF files; SVG is always in mm. */
  readonly unit?: Unit;
  /** Start of the names; the family's id when absent. */
  readonly baseName?: string;
  /** Stops that a person has accepted withhold nothing; each file says who accepted what and why. */
  readonly overrides?: readonly Override[];
  /** Writes what stop findings would withhold, with those findings in every file. */
  readonly despiteFindings?: boolean;
}

export type PartFiles =
  | {
      readonly ok: true;
      readonly files: readonly PartFile[];
      /** Why no cut path is among them; only with `despiteFindings`. */
      readonly withoutCut?: string;
    }
  | {
      readonly ok: false;
      /** The findings that stand in the way; none when the run has no value at all. */
      readonly stops: readonly Finding[];
      readonly says: string;
    };

/**
 * Writes the files of a run.
 * @param run a whole run
 * @returns four files and the print; or the stop findings that withhold them. A cut path exists only where every
 * contour of the part has one with a lead-in, whatever is asked.
 */
export function partFiles(run: PartRun, options: PartFilesOptions = {}): PartFiles {
  const stops = run.findings.filter(({ level }) => level === 'stop');
  if (run.value === undefined) return { ok: false, stops, says: 'There is no part to write files of.' };
  const { overrides = [] } = options;
  const open = stops.filter((stop) => !isOverridden(stop, overrides));
  if (open.length > 0 && options.despiteFindings !== true) {
    return {
      ok: false,
      stops: open,
      says: `${open.length === 1 ? 'A stop finding withholds' : `${open.length} stop findings withhold`} the files.`,
    };
  }
  const warnings = stops.map((stop) => wordStop(stop, overrides));
  const { value } = run;
  const missing = contoursWithoutPath(value);
  const base = { baseName: safeBaseName(options.baseName ?? run.family) };
  const dxf = {
    ...base,
    version: options.dxf === 'r2000' ? 'R2000' : 'R12',
    unit: options.unit ?? 'mm',
  } as const;
  const { part, plan } = value;
  const info = { name: part.name, material: part.material, quantity: part.quantity };
  const written = [
    writeFinishedDxf(part, dxf),
    ...(missing.length === 0 ? [writeCutDxf(plan, info, dxf)] : []),
    writeFinishedSvg(part, base),
    ...(missing.length === 0 ? [writeCutSvg(plan, info, base)] : []),
  ];
  const print = printOf(run);
  const files: readonly PartFile[] = [
    ...written.map(({ name, kind, format, text }): PartFile => ({
      name,
      kind,
      mediaType: format === 'dxf' ? 'image/vnd.dxf' : 'image/svg+xml',
      text: format === 'dxf' ? warnInDxf(text, warnings) : warnInSvg(text, warnings),
    })),
    ...(print === undefined
      ? []
      : [
          {
            name: `${base.baseName}.print.svg`,
            kind: 'print',
            mediaType: 'image/svg+xml',
            text: warnInSvg(print, warnings),
          } as const,
        ]),
  ];
  if (missing.length === 0) return { ok: true, files };
  return {
    ok: true,
    files,
    withoutCut: `No cut path is written: ${missing.join(', ')} cannot be cut with a lead-in.`,
  };
}

/** A stop as the files carry it. */
function wordStop(stop: Finding, overrides: readonly Override[]): string {
  const override = overrides.find((one) => isOverridden(stop, [one]));
  const accepted =
    override === undefined ? 'written despite it' : `accepted ${override.date}, "${override.reason}"`;
  return `STOP FINDING, ${accepted}: ${stop.title}. ${stop.says}`;
}

/** Names of contours of the part that the plan does not cut. */
function contoursWithoutPath({ part, plan }: PartValue): readonly string[] {
  const planned = new Set(plan.contours.map(({ featureId }) => featureId));
  return part.features
    .filter((feature) => isCut(feature) && !planned.has(feature.id))
    .map(({ name }) => name);
}

/** Signs of the trade in plain ASCII, as a DXF comment wants them. */
const ASCII: readonly (readonly [string, string])[] = [
  ['±', '+/-'],
  ['×', 'x'],
  ['°', ' deg'],
  ['⌀', 'dia '],
  ['·', '.'],
  ['≥', '>='],
  ['≤', '<='],
];

const toAscii = (text: string): string =>
  ASCII.reduce((current, [sign, plain]) => current.replaceAll(sign, plain), text)
    .normalize('NFKD')
    .replaceAll(/[^\u0020-\u007e]/g, '');

/** Longest text of a DXF group that every reader takes. */
const LONGEST_GROUP = 250;

/** Warnings as comments (group 999) in front of everything else. */
function warnInDxf(text: string, warnings: readonly string[]): string {
  return warnings.map((line) => `999\r\n${toAscii(line).slice(0, LONGEST_GROUP)}\r\n`).join('') + text;
}

/** Warnings as a comment behind the XML declaration; a comment may hold neither markup nor two dashes in a row. */
function warnInSvg(text: string, warnings: readonly string[]): string {
  if (warnings.length === 0) return text;
  const comment = `<!--\n${warnings.map((line) => line.replaceAll(/[<>&]/g, ' ').replaceAll(/--+/g, '-')).join('\n')}\n-->`;
  const end = text.indexOf('?>') + 2;
  return `${text.slice(0, end)}\n${comment}${text.slice(end)}`;
}
