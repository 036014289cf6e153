// Pictures that a person can open: a changed drawing changes its file in test/snapshots/drawing.
import { describe, expect, test } from 'vitest';
import { drawPrint, writeDisplaySvg } from '../../parts-library/drawing/index.js';
import { bentBracket, crowdedAdapter, lobedAdapter, ringPlate } from './orchard-parts.js';
import { onPaper, onWindow, PAPERS, WINDOWS } from './prints.js';

const [wide, middle, narrow] = WINDOWS;
const [a4, a3, letter] = PAPERS;

const file = (name: string): string => `../snapshots/drawing/${name}.svg`;

describe('pictures', () => {
  test.each([
    ['hub-flange', onWindow(ringPlate(150, 6), wide)],
    ['hub-flange-narrow', onWindow(ringPlate(60, 12), narrow)],
    ['adapter', onWindow(lobedAdapter(150, 5), wide)],
    ['adapter-middle', onWindow(lobedAdapter(150, 5), middle)],
    ['adapter-crowded', onWindow(crowdedAdapter(150, 5), wide)],
    ['adapter-crowded-narrow', onWindow(crowdedAdapter(150, 5), narrow)],
    ['adapter-twelve-lobes', onWindow(crowdedAdapter(400, 12), wide)],
    ['bracket', onWindow(bentBracket(), wide)],
  ] as const)('%s', async (name, input) => {
    const svg = writeDisplaySvg(drawPrint(input), { unit: 'px', theme: 'light' });
    await expect(svg).toMatchFileSnapshot(file(name));
  });

  test('adapter-dark', async () => {
    const list = drawPrint(onWindow(lobedAdapter(150, 5), wide));
    await expect(writeDisplaySvg(list, { unit: 'px', theme: 'dark' })).toMatchFileSnapshot(
      file('adapter-dark'),
    );
  });

  test.each([
    ['adapter-a4', onPaper(crowdedAdapter(150, 5), a4)],
    ['adapter-a3', onPaper(crowdedAdapter(150, 5), a3)],
    ['bracket-letter', onPaper(bentBracket(), letter)],
  ] as const)('%s', async (name, input) => {
    const svg = writeDisplaySvg(drawPrint(input), { unit: 'mm', theme: 'print' });
    await expect(svg).toMatchFileSnapshot(file(name));
  });
});
