// Long work in small steps: the contract that searches keep, and the loop that runs one until it is told to stop.
import type { Json } from '../model/index.js';

/**
 * Work that goes on in rounds. It has no clock and no threads: whoever drives it decides when to stop, and `state`
 * lets it go on later, elsewhere.
 */
export interface Stepper<S extends Json, B> {
  /** Works on. A round of n iterations leaves it where n rounds of one would. */
  readonly step: (iterations: number) => void;
  /** The best result so far. */
  readonly best: () => B | undefined;
  /** Everything needed to go on, as plain JSON. */
  readonly state: () => S;
  /** True when going on cannot find anything better. */
  readonly finished: () => boolean;
}

/**
 * Starts a search, or resumes one from a state. Result = f(problem, seed, iterations): the same input gives the same
 * result on every machine.
 */
export type CreateSearch<P, S extends Json, B> = (problem: P, seed: number, resumeFrom?: S) => Stepper<S, B>;

export interface StepperRun<B> {
  readonly best: B | undefined;
  readonly iterations: number;
  readonly ended: 'finished' | 'stopped' | 'out of iterations';
}

/**
 * Runs a stepper in rounds.
 * @param options how many iterations at most and per round; `shouldStop` is asked before each round (a clock, a
 * cancel button, a lost connection)
 * @throws RangeError for a round that is not a whole number of at least one
 */
export function runStepper<S extends Json, B>(
  stepper: Stepper<S, B>,
  options: {
    readonly iterations: number;
    readonly round: number;
    readonly shouldStop?: (progress: {
      readonly iterations: number;
      readonly best: B | undefined;
    }) => boolean;
  },
): StepperRun<B> {
  const { iterations: most, round, shouldStop } = options;
  if (!Number.isInteger(round) || round < 1)
    throw new RangeError(`runStepper: a round of ${round} iterations`);
  let iterations = 0;
  for (;;) {
    const best = stepper.best();
    if (stepper.finished()) return { best, iterations, ended: 'finished' };
    if (iterations >= most) return { best, iterations, ended: 'out of iterations' };
    if (shouldStop?.({ iterations, best }) === true) return { best, iterations, ended: 'stopped' };
    const now = Math.min(round, most - iterations);
    stepper.step(now);
    iterations += now;
  }
}
