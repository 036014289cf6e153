// The stepper contract, kept by a small search: the longest word that a seeded walk of the alphabet finds.
import { describe, expect, it } from 'vitest';
import { runStepper, type CreateSearch } from '../../parts-library/job/index.js';

interface State {
  readonly [name: string]: number;
  readonly at: number;
  readonly best: number;
  readonly done: number;
}

/** Looks for the largest value of x (100 - x) over a walk through 0..99; the stride comes from the seed. */
const createParabolaSearch: CreateSearch<{ readonly size: number }, State, number> = (
  problem,
  seed,
  resumeFrom,
) => {
  let { at, best, done } = resumeFrom ?? { at: seed % problem.size, best: -1, done: 0 };
  const score = (x: number) => x * (problem.size - x);
  return {
    step: (iterations) => {
      for (let one = 0; one < iterations && done < problem.size; one += 1) {
        if (best < 0 || score(at) > score(best)) best = at;
        at = (at + 7) % problem.size;
        done += 1;
      }
    },
    best: () => (best < 0 ? undefined : best),
    state: () => ({ at, best, done }),
    finished: () => done >= problem.size,
  };
};

describe('a stepper', () => {
  it('runs to the end and says so', () => {
    const run = runStepper(createParabolaSearch({ size: 100 }, 1), { iterations: 1000, round: 8 });
    expect(run).toEqual({ best: 50, iterations: 104, ended: 'finished' });
  });

  it('stops when it is told to, between rounds', () => {
    const run = runStepper(createParabolaSearch({ size: 100 }, 1), {
      iterations: 1000,
      round: 5,
      shouldStop: ({ iterations }) => iterations >= 20,
    });
    expect([run.iterations, run.ended]).toEqual([20, 'stopped']);
  });

  it('stops when its iterations are used up, the last round being shorter', () => {
    const run = runStepper(createParabolaSearch({ size: 100 }, 1), { iterations: 13, round: 5 });
    expect([run.iterations, run.ended]).toEqual([13, 'out of iterations']);
  });

  it('goes on from a copy of its state where it would have been without the break', () => {
    const whole = createParabolaSearch({ size: 100 }, 3);
    whole.step(40);
    const first = createParabolaSearch({ size: 100 }, 3);
    first.step(15);
    const resumed = createParabolaSearch({ size: 100 }, 3, structuredClone(first.state()));
    resumed.step(25);
    expect(resumed.state()).toEqual(whole.state());
    expect(resumed.best()).toBe(whole.best());
  });

  it('refuses a round that would never end', () => {
    expect(() => runStepper(createParabolaSearch({ size: 9 }, 1), { iterations: 9, round: 0 })).toThrow(
      RangeError,
    );
  });
});
