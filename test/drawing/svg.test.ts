// The SVG of a display list: valid XML, true size, true arcs, readable without colour.
import { describe, expect, test } from 'vitest';
import {
  dashesOf,
  drawPrint,
  pathData,
  writeDisplaySvg,
  type DisplayList,
  type Text,
} from '../../parts-library/drawing/index.js';
import { crowdedAdapter, ringPlate } from './orchard-parts.js';
import { onPaper, onWindow, PAPERS, WINDOWS } from './prints.js';

/** Reads XML strictly enough for these files: tags nest, attributes are quoted, entities are known. */
function readTags(xml: string): readonly string[] {
  const open: string[] = [];
  const names: string[] = [];
  const rest = xml.replace(/<\?xml version="1\.0" encoding="UTF-8"\?>\n/, '');
  const tag = /<(\/?)([a-z]+)((?: [a-zA-Z:-]+="[^"<]*")*)(\/?)>|([^<]+)|(<)/g;
  for (const [, closing, name = '', attributes = '', single, words, stray] of rest.matchAll(tag)) {
    if (stray !== undefined) throw new Error('a tag that cannot be read');
    if (/&(?!(amp|lt|gt|quot|#39);)/.test(words ?? attributes)) throw new Error('a stray ampersand');
    if (words !== undefined) continue;
    if (closing === '/') {
      if (open.pop() !== name) throw new Error(`</${name}> closes nothing`);
      continue;
    }
    names.push(name);
    if (single !== '/') open.push(name);
  }
  if (open.length > 0) throw new Error(`<${open.join('> <')}> is not closed`);
  return names;
}

const withText = (words: string): DisplayList => {
  const text: Text = {
    kind: 'text',
    role: 'dimension',
    at: { x: 10, y: 20 },
    anchor: 'start',
    degrees: -90,
    size: 10,
    face: 'condensed',
    text: words,
    box: [
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 1, y: 1 },
      { x: 0, y: 1 },
    ],
  };
  return { width: 100, height: 50, scale: 1, items: [text], tabOrder: [] };
};

describe('path data', () => {
  test('is SVG’s own', () => {
    expect(pathData([['M', 1, 2], ['L', 3.5, -4], ['A', 5, 0, 1, 6, 7], ['Z']])).toBe(
      'M1 2L3.5 -4A5 5 0 0 1 6 7Z',
    );
  });
});

describe('SVG', () => {
  const list = drawPrint(onWindow(crowdedAdapter(150, 5), WINDOWS[0]));

  test.each(['print', 'light', 'dark'] as const)('is well-formed in the theme %s', (theme) => {
    const names = readTags(writeDisplaySvg(list, { unit: 'px', theme }));
    expect(names[0]).toBe('svg');
    expect(names.filter((name) => name === 'text').length).toBeGreaterThan(20);
  });

  test('has its true size: a sheet is in millimetres', () => {
    const sheet = drawPrint(onPaper(ringPlate(150, 6), PAPERS[0]));
    const svg = writeDisplaySvg(sheet, { unit: 'mm', theme: 'print' });
    expect(svg).toContain('width="297mm" height="210mm" viewBox="0 0 297 210"');
  });

  test('escapes what XML reserves and drops what it forbids', () => {
    const svg = writeDisplaySvg(withText('<Hub> & "bore"\u0007'), { unit: 'px', theme: 'light' });
    readTags(svg);
    expect(svg).toContain('&lt;Hub&gt; &amp; &quot;bore&quot;<');
  });

  test('words keep the room that was measured for them, whatever face the reader’s machine has', () => {
    const list = drawPrint(onPaper(ringPlate(150, 6), PAPERS[0]));
    const svg = writeDisplaySvg(list, { unit: 'mm', theme: 'print' });
    const texts = list.items.filter((item): item is Text => item.kind === 'text' && item.text.trim() !== '');
    expect(texts.length).toBeGreaterThan(5);
    const [first] = texts;
    const [a, b] = first?.box ?? [];
    const measured = Math.hypot((b?.x ?? 0) - (a?.x ?? 0), (b?.y ?? 0) - (a?.y ?? 0));
    const kept = [...svg.matchAll(/textLength="([\d.]+)" lengthAdjust="spacingAndGlyphs"/g)].map((match) =>
      Number(match[1]),
    );
    expect(kept).toHaveLength(texts.length);
    expect(kept.some((width) => Math.abs(width - measured) < 0.01)).toBe(true);
  });

  test('turns a text about its anchor', () => {
    expect(writeDisplaySvg(withText('35'), { unit: 'px', theme: 'light' })).toContain(
      'transform="rotate(-90 10 20)"',
    );
  });

  test('in print there is no colour but grey', () => {
    const svg = writeDisplaySvg(list, { unit: 'mm', theme: 'print' });
    for (const [, red, green, blue] of svg.matchAll(/#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/g)) {
      expect([red, green]).toEqual([blue, blue]);
    }
  });

  test('line types differ by their dashes', () => {
    const types = [
      'continuous',
      'dashed',
      'long-dashed-dotted',
      'long-dashed-double-dotted',
      'dotted',
    ] as const;
    expect(new Set(types.map((type) => dashesOf(type, 1))).size).toBe(5);
    expect(dashesOf('continuous', 1)).toBe('');
    expect(dashesOf('dotted', 0.25)).toBe('0.25 0.75');
  });

  test('a stop balloon has two rings, so that it needs no colour', () => {
    const rings = (level: 'stop' | 'note'): number => {
      const svg = writeDisplaySvg(
        {
          ...withText(''),
          items: [{ kind: 'balloon', at: { x: 20, y: 20 }, radius: 8, number: 1, level, code: 'web' }],
        },
        { unit: 'px', theme: 'print' },
      );
      return svg.split('<circle').length - 1;
    };
    expect(rings('stop')).toBe(2);
    expect(rings('note')).toBe(1);
  });
});
