// Display lists as a PDF: one page each, vector lines, text as text, at the size they state in mm.
import PdfKit from 'pdfkit';
import {
  dashesOf,
  pathData,
  type DisplayItem,
  type DisplayList,
  type Text,
} from '../../parts-library/drawing/index.js';

/** Points of PostScript in a millimetre: 72 per inch (ISO 32000). */
const POINTS = 72 / 25.4;
/** ISO 128-2 line widths of group 0.5, mm. */
const WIDE = 0.5;
const NARROW = 0.25;

/** Signs that the standard fonts of PDF lack, as they are written instead. */
const WRITTEN: readonly (readonly [string, string])[] = [
  ['⌀', 'Ø'],
  ['≥', '>='],
  ['≤', '<='],
  ['−', '-'],
  ['’', "'"],
];

const plain = (text: string): string =>
  WRITTEN.reduce((current, [sign, instead]) => current.replaceAll(sign, instead), text);

const FONTS: Readonly<Record<Text['face'], string>> = {
  regular: 'Helvetica',
  'semi-bold': 'Helvetica-Bold',
  condensed: 'Helvetica',
};

function paintText(document: PDFKit.PDFDocument, text: Text): void {
  const { at, size, face, degrees, anchor, box } = text;
  const shown = plain(text.text);
  document.font(FONTS[face]).fontSize(size);
  // The standard fonts run wider than the drawing's own: each text is set to the width it was measured with.
  const measured = Math.hypot(box[1].x - box[0].x, box[1].y - box[0].y);
  const width = document.widthOfString(shown);
  const squeeze = width === 0 ? 1 : measured / width;
  const shift = anchor === 'start' ? 0 : anchor === 'middle' ? -measured / 2 : -measured;
  document
    .save()
    .translate(at.x, at.y)
    .rotate(degrees)
    .translate(shift, 0)
    .scale(squeeze, 1)
    .fillColor('black')
    .text(shown, 0, 0, { lineBreak: false, baseline: 'alphabetic' })
    .restore();
}

function paint(document: PDFKit.PDFDocument, item: DisplayItem): void {
  if (item.kind === 'text') {
    paintText(document, item);
    return;
  }
  if (item.kind === 'balloon') {
    document.lineWidth(NARROW).circle(item.at.x, item.at.y, item.radius).fillAndStroke('white', 'black');
    document.font('Helvetica').fontSize(item.radius * 1.05);
    const number = String(item.number);
    document
      .fillColor('black')
      .text(number, item.at.x - document.widthOfString(number) / 2, item.at.y + item.radius * 0.36, {
        lineBreak: false,
        baseline: 'alphabetic',
      });
    return;
  }
  const data = pathData(item.path);
  if (data === '') return;
  const dashes = dashesOf(item.type, NARROW).split(' ').filter(Boolean).map(Number);
  document.save().path(data);
  if (item.fill === 'metal') document.fill('#eeeeee');
  else if (item.fill === 'ink') document.fill('black');
  else if (item.fill === 'paper') document.fill('white');
  else {
    document.lineWidth(item.weight === 'wide' ? WIDE : NARROW).strokeColor('black');
    if (dashes.length > 0) drawDashed(document, dashes);
    document.stroke();
  }
  document.restore();
}

/** A dash pattern of any number of lengths, which the document's own call does not take. */
function drawDashed(document: PDFKit.PDFDocument, dashes: readonly number[]): void {
  document.addContent(`[${dashes.map((length) => length.toFixed(3)).join(' ')}] 0 d`);
}

/**
 * Writes display lists in mm as a PDF.
 * @param pages one for each page, paper size included
 * @param title what the file is called in a reader
 */
export function writeDisplayPdf(pages: readonly DisplayList[], title: string): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    // No date in the file: the same template gives the same bytes, and nobody's clock is in it.
    const document = new PdfKit({
      autoFirstPage: false,
      info: { Title: title, Creator: 'Fishplate', CreationDate: new Date(0), ModDate: new Date(0) },
    });
    const chunks: Uint8Array[] = [];
    document.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    document.on('end', () => resolve(Buffer.concat(chunks)));
    document.on('error', reject);
    for (const page of pages) {
      document.addPage({ size: [page.width * POINTS, page.height * POINTS], margin: 0 });
      document.scale(POINTS);
      for (const item of page.items) paint(document, item);
    }
    document.end();
  });
}
