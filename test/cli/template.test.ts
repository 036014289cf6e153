// The paper template: true size whatever the page, a bar to measure on each, pages that lie over each other.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { drawTemplate, type DisplayList, type TemplatePaper } from '../../parts-library/drawing/index.js';
import { runPart, startingShop, templatePages } from '../../parts-library/job/index.js';
import { run } from '../../server/cli/run.js';
import { inFolder } from './in-folder.js';

const pagesOf = (outside: number, paper: TemplatePaper): readonly DisplayList[] =>
  templatePages(
    runPart(
      { family: 'adapter-plate', parameters: { outside, boltCircle: 'circle 95', hub: 57.15 }, unit: 'mm' },
      startingShop,
    ),
    paper,
  );

const pointsOf = (page: DisplayList, role: string): readonly (readonly [number, number])[] =>
  page.items.flatMap((item) =>
    item.kind === 'stroke' && item.role === role
      ? item.path.flatMap((command): readonly (readonly [number, number])[] =>
          command[0] === 'M' || command[0] === 'L'
            ? [[command[1], command[2]]]
            : command[0] === 'A'
              ? [[command[4], command[5]]]
              : [],
        )
      : [],
  );

describe('a paper template', () => {
  test('of a plate of 130 mm fits one A4 page, 130 mm wide there', () => {
    const [page, ...more] = pagesOf(130, 'a4');
    expect(more).toEqual([]);
    const xs = pointsOf(page ?? raise(), 'outline').map(([x]) => x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(130, 2);
  });

  test('has a bar of 100 mm on every page, inside what a printer reaches', () => {
    for (const paper of ['a4', 'letter'] as const) {
      const pages = pagesOf(400, paper);
      // 400 mm on A4 lying down, 277 × 172 mm a page less 10 mm shared: 2 across and 3 down, or 3 and 2 standing.
      expect(pages).toHaveLength(6);
      for (const page of pages) {
        const bar = pointsOf(page, 'scale-bar');
        const xs = bar.map(([x]) => x);
        expect(Math.max(...xs) - Math.min(...xs)).toBe(100);
        for (const [x, y] of bar) {
          expect(x).toBeGreaterThanOrEqual(10);
          expect(y).toBeLessThanOrEqual(page.height - 10);
        }
      }
    }
  });

  test('shows every point of the outline on some page, and neighbours share 10 mm', () => {
    const pages = pagesOf(260, 'a4');
    expect(pages).toHaveLength(2);
    // The first shows the circle to 5 mm below its middle, the second from 5 mm above: a half chord of √(130² − 5²).
    const halfChords = pages.map((page, index) => {
      const points = pointsOf(page, 'outline');
      const edge =
        index === 0 ? Math.max(...points.map(([, y]) => y)) : Math.min(...points.map(([, y]) => y));
      const xs = points.filter(([, y]) => Math.abs(y - edge) < 0.01).map(([x]) => x);
      return (Math.max(...xs) - Math.min(...xs)) / 2;
    });
    expect(halfChords[0]).toBeCloseTo(129.904, 2);
    expect(halfChords[1]).toBeCloseTo(129.904, 2);
  });

  test('marks carry their drill, bend lines are dashed', () => {
    const value =
      runPart({ family: 'bent-bracket', parameters: {}, unit: 'mm' }, startingShop).value ?? raise();
    const [page] = drawTemplate(value.part, 'a4', { title: 'bracket', length: String });
    const dashed = (page?.items ?? []).filter((item) => item.kind === 'stroke' && item.type === 'dashed');
    expect(dashed.length).toBe(value.part.features.filter(({ purpose }) => purpose === 'score').length);
  });

  test('is written beside the files as PDF and SVG, the PDF on the paper that was asked for', async () => {
    await inFolder(async (folder) => {
      const { code } = await run([
        'part',
        'adapter-plate',
        '--outside',
        '250',
        '--template',
        'letter',
        '--out',
        folder,
      ]);
      expect(code).toBe(0);
      const pdf = await readFile(join(folder, 'adapter-plate.template.pdf'), 'latin1');
      // Two pages of 11 × 8.5 in at 72 points an inch, lying down.
      expect(pdf.startsWith('%PDF-1.')).toBe(true);
      expect(pdf.match(/\/MediaBox \[0 0 792 612\]/g)).toHaveLength(2);
      const svg = await readFile(join(folder, 'adapter-plate.template-2.svg'), 'utf8');
      expect(svg).toContain('width="279.4mm"');
    });
  });

  test('on other paper is refused with what there is', async () => {
    expect((await run(['part', 'adapter-plate', '--template', 'a3'])).err).toContain(
      'accepted is a4 or letter',
    );
  });
});

function raise(): never {
  throw new Error('The part was not drawn.');
}
