// The command that reproduces the screen: read back by the family it means the same sizes.
import { describe, expect, it } from 'vitest';
import { flagOf, writeCommand, type OnScreen } from '../../client/sheet/command-line.js';
import { findFamily, type Family } from '../../parts-library/parts/index.js';

function adapter(): Family {
  const family = findFamily('adapter-plate');
  if (family === undefined) throw new Error('There is no adapter plate.');
  return family;
}

const onScreen = (entered: OnScreen['entered'], more: Partial<OnScreen> = {}): OnScreen => ({
  family: adapter(),
  row: { id: 'adapter', family: 'adapter-plate', name: 'Adapter', quantity: 1, parameters: entered },
  entered,
  unit: 'mm',
  process: {},
  ...more,
});

describe('the command for what is on screen', () => {
  it('writes flags as the command line spells them', () => {
    expect(flagOf('boltCircle')).toBe('--bolt-circle');
    expect(flagOf('pattern2.holeFit')).toBe('--pattern2.hole-fit');
  });

  it('names only what was entered, and quotes what a shell would split', () => {
    const entered = {
      bolts: 5,
      boltCircle: { typed: 'adjacent 55.84 ±0.1', metric: 'adjacent 55.84±0.1 mm', measure: {} },
      hub: { typed: '2 1/4 in', mm: 57.15 },
    };
    expect(writeCommand(onScreen(entered))).toBe(
      "npx fishplate part adapter-plate --bolts 5 --bolt-circle 'adjacent 55.84 ±0.1' --hub '2 1/4 in' --name Adapter --out adapter",
    );
  });

  it('keeps the unit of the job, and what was given about the cut', () => {
    const command = writeCommand(
      onScreen(
        { hub: { typed: '2.25', mm: 57.15 } },
        { unit: 'in', process: { kerf: 1.4, processClass: 'air-65A' } },
      ),
    );
    expect(command).toContain('--unit in --hub 2.25 --process air-65A --kerf ');
    expect(command).toContain("--kerf '1.4 mm'");
  });

  it('ties a value that starts with a dash to its flag', () => {
    expect(writeCommand(onScreen({ clocking: { typed: '-18', value: -18 } }))).toContain('--clocking=-18');
  });
});
