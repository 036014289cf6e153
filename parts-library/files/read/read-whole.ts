// The whole way of a drawing: text, strokes, millimetres, shapes, one part, and what there is to say about it.
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { DRAWING_LIMITS, type DrawnShape, type Finding, type Staged } from '../../model/index.js';
import { assemble, isCutPath, tidy } from './assemble.js';
import type { ReadLayer } from './operations.js';
import type { ReadDrawing } from './read-drawing.js';
import { checkOptions, type DrawingOptions } from './options.js';
import { DrawingProblem } from './problem.js';
import { toMillimetres } from './scale.js';
import { shapesOf, type Shapes } from './shapes.js';
import type { Sketch } from './sketch.js';
import { textOfDrawing } from './text.js';
import { heard, short, some } from './words.js';

/** By its first character: XML begins with a bracket, DXF with the number of a group. */
function formatOf(text: string): 'dxf' | 'svg' {
  const start = text.trimStart();
  if (start.startsWith('<')) return 'svg';
  if (/^\d{1,4}\s*[\r\n]/.test(start)) return 'dxf';
  throw new DrawingProblem(
    start === ''
      ? 'The file is empty.'
      : `The file begins with "${start.slice(0, 20).replaceAll(/\p{Cc}/gu, ' ')}", which is neither DXF nor SVG.`,
  );
}

/** Each format's reader is fetched when a file of it is read. */
async function sketchOf(text: string, format: 'dxf' | 'svg'): Promise<Sketch> {
  if (format === 'dxf') return (await import('./dxf.js')).readDxf(text);
  return (await import('./svg.js')).readSvg(text);
}

/**
 * Reads a drawing, or throws what stands in its way.
 * @throws DrawingProblem
 */
export async function readWhole(
  source: string | Uint8Array,
  options: DrawingOptions,
): Promise<Staged<ReadDrawing>> {
  const read = checkOptions(options);
  const text = textOfDrawing(source);
  const format = options.format ?? formatOf(text);
  const sketch = await sketchOf(text, format);
  const scaled = toMillimetres(sketch, options.unit);
  const shapes = shapesOf(scaled.strokes, read);
  const assembled = assemble(shapes, scaled.points, read, sketch.hiddenLayers);
  checkSize(assembled.shapes);
  const findings = [
    ...unitFindings(scaled.unit, scaled.otherwise),
    ...mendedFindings(shapes),
    ...assembled.findings,
    ...assembled.faults.map((says) => heard('unsound-contour', 'stop', 'A contour was left out', says)),
    ...layerFindings(assembled.layers),
    ...otherFindings(sketch),
  ];
  const notes = findings
    .filter(({ code, level }) => level !== 'stop' && code !== 'layers')
    .map(({ title, says }) => sentence(`${title}. ${says}`));
  return {
    value: {
      drawing: {
        source: {
          name: tidy(options.name ?? `drawing.${format}`),
          format,
          unit: scaled.unit,
          part: read.part,
          digest: bytesToHex(sha256(utf8ToBytes(text))),
        },
        shapes: assembled.shapes,
        notes: notes.slice(0, DRAWING_LIMITS.sentences),
        faults: assembled.faults.map(sentence).slice(0, DRAWING_LIMITS.sentences),
      },
      layers: assembled.layers,
      parts: assembled.parts,
    },
    findings,
  };
}

const sentence = (text: string): string =>
  text.length <= DRAWING_LIMITS.sentenceLength
    ? text
    : `${text.slice(0, DRAWING_LIMITS.sentenceLength - 1)}…`;

function checkSize(shapes: readonly DrawnShape[]): void {
  const vertices = shapes.reduce((sum, shape) => sum + shape.vertices.length, 0);
  if (shapes.length > DRAWING_LIMITS.shapes)
    throw new DrawingProblem(
      `The part has ${shapes.length} shapes; accepted are up to ${DRAWING_LIMITS.shapes}. Ignore layers that are not made.`,
      'layers',
    );
  if (vertices > DRAWING_LIMITS.vertices)
    throw new DrawingProblem(
      `The part comes to ${vertices} lines and arcs; accepted are up to ${DRAWING_LIMITS.vertices}. A larger arc tolerance would do, or curves in place of many short lines.`,
      'arcTolerance',
    );
}

const unitFindings = (unit: string, otherwise: string | undefined): readonly Finding[] =>
  otherwise === undefined
    ? []
    : [
        heard(
          'drawing-unit',
          'caution',
          `Taken to be in ${unit}, though the file says ${otherwise}`,
          'Check one size on the print against the drawing.',
          { field: 'unit' },
        ),
      ];

function mendedFindings({ told }: Shapes): readonly Finding[] {
  const { curves, deviation, doubles, doublesComplete, gaps, widest, parted, chorded, specks } = told;
  const when = (isSo: boolean, finding: () => Finding): readonly Finding[] => (isSo ? [finding()] : []);
  return [
    ...when(gaps > 0, () =>
      heard(
        'gaps-closed',
        'note',
        `${some(gaps, 'gap')} closed, the widest ${short(widest)} mm`,
        'Ends that nearly met were joined half way between.',
        { field: 'gap', value: { amount: widest, unit: 'mm' } },
      ),
    ),
    ...when(doubles > 0, () =>
      heard(
        'doubled-lines',
        'note',
        `${some(doubles, 'doubled line')} left out`,
        'Drawn twice in the same place, they would be cut twice.',
      ),
    ),
    ...when(!doublesComplete, () =>
      heard(
        'doubled-lines-unseen',
        'caution',
        'Too many lines lie across each other to look for doubled ones',
        'Look for lines that would be cut twice; ignoring layers with hatching would do.',
      ),
    ),
    ...when(curves > 0, () =>
      heard(
        'arcs-fitted',
        'note',
        `${some(curves, 'curve')} turned into arcs, at most ${short(deviation)} mm off`,
        'Splines and ellipses become tangent arcs.',
        { field: 'arcTolerance', value: { amount: deviation, unit: 'mm' } },
      ),
    ),
    ...when(chorded > 0, () =>
      heard(
        'chords-to-circles',
        'note',
        `${some(chorded, 'circle')} drawn as chords made round`,
        'Two dozen even chords and more with their corners on one circle are that circle.',
      ),
    ),
    ...when(parted > 0, () =>
      heard(
        'corners-parted',
        'caution',
        `Contours that touch at a corner were parted in ${parted} ${parted === 1 ? 'place' : 'places'}`,
        'They hang together by nothing there; look whether a web is meant.',
      ),
    ),
    ...when(specks > 0, () =>
      heard(
        'specks',
        'note',
        `${some(specks, 'line')} of no length left out`,
        'They are shorter than 0.001 mm.',
      ),
    ),
  ];
}

function layerFindings(layers: readonly ReadLayer[]): readonly Finding[] {
  const words = layers.map(({ name, operation, because, count }) => {
    const why = because === 'hidden' ? ', hidden in the file' : because === 'name' ? ', by its name' : '';
    return `${tidy(name)}: ${operation}${why} (${count})`;
  });
  return [
    heard('layers', 'note', some(layers.length, 'layer'), `${words.slice(0, 30).join('; ')}.`, {
      field: 'layers',
    }),
    ...(layers.some(({ name }) => isCutPath(name))
      ? [
          heard(
            'cut-path-drawing',
            'caution',
            'This is a cut path with the kerf in it',
            'Brought in as a part, the kerf would be added once more; bring in the file of finished sizes.',
          ),
        ]
      : []),
  ];
}

function otherFindings({ passedOver, notes }: Sketch): readonly Finding[] {
  const kinds = [...passedOver].map(([kind, count]) => `${count} × ${tidy(kind)}`);
  return [
    ...notes.slice(0, 6).map((says) => heard('drawing-note', 'caution', 'Read with an assumption', says)),
    ...(kinds.length === 0
      ? []
      : [
          heard(
            'passed-over',
            'note',
            'Some of the drawing holds no line to cut',
            `Left out: ${kinds.slice(0, 12).join(', ')}. Text and hatching count only as plain lines.`,
          ),
        ]),
  ];
}
