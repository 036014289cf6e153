// Everything that follows from a drive, before it is judged or worded.
import { chooseChain, type ChainChoice } from './chain-choice.js';
import { hillOf, type Hill } from './hill.js';
import type { Candidate } from './identify.js';
import { isLine, lineOf, type Line, type NoLine } from './line.js';
import type { Drive } from './parameters.js';
import { chainSpeedOf, pullOf, type Pull } from './pull.js';
import { toothChanges, type ToothChange } from './tooth-change.js';
import { turningOf, tyreOf, type Turning, type Tyre } from './turning.js';

export interface Worked {
  readonly p: Drive;
  readonly candidates: readonly Candidate[];
  readonly choice: ChainChoice | undefined;
  readonly tyre: Tyre | undefined;
  readonly turning: Turning;
  readonly line: Line | undefined;
  /** Why the chain does not go round, where links or centres were given. */
  readonly noLine: NoLine | undefined;
  readonly pull: Pull | undefined;
  /** m/s */
  readonly chainSpeed: number | undefined;
  readonly hill: Hill | undefined;
  /** The drive as it is first. */
  readonly changes: readonly ToothChange[];
}

/** Works a drive out. What was not given leaves its part out; nothing throws. */
export function workOut(p: Drive): Worked {
  const { candidates, choice } = chooseChain(p);
  const tyre = tyreOf(p);
  const turning = turningOf(p, tyre);
  const answer = choice === undefined ? undefined : lineOf(p, choice);
  const line = isLine(answer) ? answer : undefined;
  const pull = pullOf(p, turning, tyre, choice);
  return {
    p,
    candidates,
    choice,
    tyre,
    turning,
    line,
    noLine: answer === undefined || isLine(answer) ? undefined : answer,
    pull,
    chainSpeed: chainSpeedOf(p, turning, choice),
    hill: hillOf(p, pull),
    changes: toothChanges({ p, tyre, choice, line }),
  };
}
