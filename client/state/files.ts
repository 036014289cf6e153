// The files of the part on screen: what is withheld and why, accepting a stop, and handing a file to the browser.
import {
  isOverridden,
  partFiles,
  type Job,
  type PartFile,
  type PartFilesOptions,
  type PartRun,
  type Row,
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
export const download = ({ name, text, mediaType }: PartFile): void =>
  save(new Blob([text], { type: mediaType }), name);

function save(content: Blob, name: string): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}

/** Has the server make the paper template of a row, and hands it to the browser's downloads. */
export async function takeTemplate(
  row: Row,
  unit: Job['unit'],
  paper: 'a4' | 'letter',
): Promise<{ readonly says: string }> {
  const { family, parameters, name } = row;
  try {
    const answer = await fetch(`/api/parts/${family}/template?paper=${paper}`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({ parameters, unit, name }),
    });
    if (!answer.ok) return { says: 'The template could not be made: the part cannot be drawn as it stands.' };
    const [, file = 'template.pdf'] =
      /filename="([^"]+)"/.exec(answer.headers.get('Content-Disposition') ?? '') ?? [];
    save(await answer.blob(), file);
    return { says: `${file} written` };
  } catch {
    return { says: 'The server is away; the template is made there.' };
  }
}
