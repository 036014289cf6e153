// The files of the part on screen: what is withheld and why, accepting a stop, and handing a file to the browser.
import {
  isOverridden,
  partFiles,
  type Job,
  type PartFile,
  type PartFilesOptions,
  type PartRun,
} from '../../parts-library/job/index.js';
import type { NumberedNote } from './print.js';

export interface FileChoice {
  readonly kind: PartFile['kind'];
  readonly format: 'dxf' | 'svg';
}

export interface FileOptions {
  readonly dxf: 'r12' | 'r2000';
  readonly unit: 'mm' | 'in';
}

/** Stops that nobody has accepted as they stand now. */
export const openStops = (notes: readonly NumberedNote[], job: Job): readonly NumberedNote[] =>
  notes.filter(({ level, finding }) => level === 'stop' && !isOverridden(finding, job.overrides));

export type MadeFile =
  { readonly ok: true; readonly file: PartFile } | { readonly ok: false; readonly says: string };

const extensionOf = (file: PartFile): FileChoice['format'] =>
  file.mediaType === 'image/vnd.dxf' ? 'dxf' : 'svg';

/** Writes one file of a run; `accepted` when every stop has been accepted by a person. */
export function makeFile(
  run: PartRun,
  choice: FileChoice,
  options: FileOptions & { readonly baseName: string; readonly accepted: boolean },
): MadeFile {
  const wanted: PartFilesOptions = {
    dxf: options.dxf,
    unit: options.unit,
    baseName: options.baseName,
    despiteFindings: options.accepted,
  };
  const made = partFiles(run, wanted);
  if (!made.ok) return { ok: false, says: made.says };
  const file = made.files.find((one) => one.kind === choice.kind && extensionOf(one) === choice.format);
  if (file !== undefined) return { ok: true, file };
  return { ok: false, says: made.withoutCut ?? 'There is no such file of this part.' };
}

/** Hands a file to the browser's downloads. */
export function download(file: PartFile): void {
  const address = URL.createObjectURL(new Blob([file.text], { type: file.mediaType }));
  const link = document.createElement('a');
  link.href = address;
  link.download = file.name;
  link.click();
  URL.revokeObjectURL(address);
}
