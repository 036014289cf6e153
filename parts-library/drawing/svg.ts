// The display list as an SVG file: line types as dash patterns, two line widths, text as text.
import { textWidth } from './measure-text.js';
import type {
  Balloon,
  DisplayItem,
  DisplayList,
  Fill,
  LineType,
  PathCommand,
  Role,
  Stroke,
  Text,
} from './display-list.js';

export interface SvgOptions {
  readonly unit: 'px' | 'mm';
  readonly theme: 'print' | 'light' | 'dark';
  /** A stylesheet with the font in it, for example `@font-face{…}`; without it the reader's own fonts serve. */
  readonly fontStyle?: string;
}

/** Path data of SVG. */
export function pathData(path: readonly PathCommand[]): string {
  return path
    .map((command) => {
      if (command[0] === 'Z') return 'Z';
      if (command[0] === 'A') {
        const [, radius, large, sweep, x, y] = command;
        return `A${radius} ${radius} 0 ${large} ${sweep} ${x} ${y}`;
      }
      return `${command[0]}${command[1]} ${command[2]}`;
    })
    .join('');
}

/** Line widths of ISO 128-2's group 0.5 on paper; whole pixels in a window. */
const WIDTHS = { px: { wide: 2, narrow: 1 }, mm: { wide: 0.5, narrow: 0.25 } } as const;

/**
 * Dashes in narrow line widths. ISO 128-2 gives long dash 24, dash 12, gap 3, dot up to 0.5; long dashes are
 * halved here because a part's circles are often only a few long dashes round, and dots are as long as the line
 * is wide so that screens show them.
 */
const DASHES: Readonly<Record<LineType, readonly number[]>> = {
  continuous: [],
  dashed: [6, 3],
  'long-dashed-dotted': [14, 3, 1, 3],
  'long-dashed-double-dotted': [14, 3, 1, 3, 1, 3],
  dotted: [1, 3],
};

/** The dash pattern of a line type for a narrow line width, as SVG's stroke-dasharray wants it; empty for none. */
export const dashesOf = (type: LineType, narrow: number): string =>
  DASHES[type].map((length) => Number((length * narrow).toFixed(3))).join(' ');

interface Inks {
  readonly paper: string;
  readonly ink: string;
  readonly quiet: string;
  readonly metal: string;
  readonly weld: string;
  readonly level: Readonly<Record<Balloon['level'], string>>;
}

const INKS: Readonly<Record<SvgOptions['theme'], Inks>> = {
  print: {
    paper: '#ffffff',
    ink: '#000000',
    quiet: '#000000',
    metal: '#eeeeee',
    weld: '#666666',
    level: { stop: '#000000', caution: '#000000', note: '#000000' },
  },
  light: {
    paper: '#fbfaf6',
    ink: '#1b2026',
    quiet: '#59626b',
    metal: '#e4e6e2',
    weld: '#8d948f',
    level: { stop: '#a3271f', caution: '#8a5a00', note: '#1b2026' },
  },
  dark: {
    paper: '#16222b',
    ink: '#e8eef2',
    quiet: '#9fb0bb',
    metal: '#243441',
    weld: '#7d909c',
    level: { stop: '#ff8a7d', caution: '#f0b03f', note: '#e8eef2' },
  },
};

const FAMILY: Readonly<Record<Text['face'], string>> = {
  regular: `font-family="Barlow, 'DIN Next', 'Segoe UI', Arial, sans-serif" font-weight="400"`,
  'semi-bold': `font-family="Barlow, 'DIN Next', 'Segoe UI', Arial, sans-serif" font-weight="600"`,
  condensed: `font-family="'Barlow Semi Condensed', Barlow, 'Arial Narrow', Arial, sans-serif" font-weight="500"`,
};

const QUIET: ReadonlySet<Role> = new Set([
  'centre',
  'ghost',
  'extension',
  'dimension',
  'leader',
  'scale-bar',
]);

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text fit for XML 1.0: the five characters escaped, those that XML forbids left out. */
const escapeXml = (text: string): string =>
  text
    .replaceAll(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
    .replaceAll(/[&<>"']/g, (character) => ESCAPES[character] ?? character);

const fillOf = (fill: Fill | undefined, inks: Inks, ink: string): string => {
  if (fill === undefined || fill === 'none') return 'none';
  return fill === 'ink' ? ink : inks[fill];
};

function writeStroke(stroke: Stroke, inks: Inks, unit: 'px' | 'mm'): string {
  const ink = stroke.role === 'weld' ? inks.weld : QUIET.has(stroke.role) ? inks.quiet : inks.ink;
  const dashes = dashesOf(stroke.type, WIDTHS[unit].narrow);
  const fill = fillOf(stroke.fill, inks, ink);
  const ids = [
    ['data-feature', stroke.featureId],
    ['data-dimension', stroke.dimensionId],
    ['data-ghost', stroke.ghostId],
  ]
    .flatMap(([name, id]) => (id === undefined ? [] : [` ${name}="${escapeXml(id)}"`]))
    .join('');
  // Metal is a tint under the lines; arrowheads are their own fill.
  const lined = stroke.role !== 'metal' && stroke.fill !== 'ink';
  const line = lined ? ` stroke="${ink}" stroke-width="${WIDTHS[unit][stroke.weight]}"` : '';
  const dashed = lined && dashes !== '' ? ` stroke-dasharray="${dashes}"` : '';
  const rule = stroke.role === 'metal' ? ' fill-rule="evenodd"' : '';
  return `<path class="${stroke.role}" d="${pathData(stroke.path)}" fill="${fill}"${rule}${line}${dashed}${ids}/>`;
}

function writeText(text: Text, inks: Inks): string {
  const { x, y } = text.at;
  const turn = text.degrees === 0 ? '' : ` transform="rotate(${text.degrees} ${x} ${y})"`;
  const ink = text.role === 'ghost' ? inks.quiet : inks.ink;
  const field = text.field === undefined ? '' : ` data-field="${escapeXml(text.field)}"`;
  // Where the face is not installed another, wider one is squeezed to the room that was kept for the words.
  const width = Number(textWidth(text.text, text.face, text.size).toFixed(3));
  const room = width > 0 ? ` textLength="${width}" lengthAdjust="spacingAndGlyphs"` : '';
  return `<text class="${text.role}" x="${x}" y="${y}" text-anchor="${text.anchor}" font-size="${text.size}"${room} ${FAMILY[text.face]} fill="${ink}"${turn}${field}>${escapeXml(text.text)}</text>`;
}

/** A stop has a double ring and a caution a wide one, so that the level needs no colour. */
function writeBalloon({ at, radius, number, level, code }: Balloon, inks: Inks, unit: 'px' | 'mm'): string {
  const ink = inks.level[level];
  const widths = WIDTHS[unit];
  const size = Number((radius * (number < 10 ? 1.3 : 1.1)).toFixed(3));
  const ring = (r: number, width: number, fill: string): string =>
    `<circle cx="${at.x}" cy="${at.y}" r="${Number(r.toFixed(3))}" fill="${fill}" stroke="${ink}" stroke-width="${width}"/>`;
  const outer = ring(radius, level === 'caution' ? widths.wide : widths.narrow, inks.paper);
  const inner = level === 'stop' ? ring(radius - widths.narrow * 2, widths.narrow, 'none') : '';
  const y = Number((at.y + size * 0.35).toFixed(3));
  return `<g class="balloon ${level}" data-code="${escapeXml(code)}">${outer}${inner}<text x="${at.x}" y="${y}" text-anchor="middle" font-size="${size}" ${FAMILY.condensed} fill="${ink}">${number}</text></g>`;
}

function writeItem(item: DisplayItem, inks: Inks, unit: 'px' | 'mm'): string {
  if (item.kind === 'stroke') return writeStroke(item, inks, unit);
  return item.kind === 'text' ? writeText(item, inks) : writeBalloon(item, inks, unit);
}

/**
 * Writes a display list as a whole SVG document at its true size. The theme `print` is black on white and reads
 * by line type and weight alone.
 */
export function writeDisplaySvg(list: DisplayList, { unit, theme, fontStyle }: SvgOptions): string {
  const inks = INKS[theme];
  const size = `width="${list.width}${unit}" height="${list.height}${unit}" viewBox="0 0 ${list.width} ${list.height}"`;
  const style =
    'text{text-rendering:geometricPrecision;font-kerning:none;font-variant-ligatures:none;white-space:pre}';
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} stroke-linejoin="round">`,
    `<style>${fontStyle === undefined ? '' : escapeXml(fontStyle)}${style}</style>`,
    `<rect width="${list.width}" height="${list.height}" fill="${inks.paper}"/>`,
    ...list.items.map((item) => writeItem(item, inks, unit)),
    '</svg>',
    '',
  ].join('\n');
}
