// Findings: what a check concluded, with its numbers, its limit, where the rule comes from and what would mend it.
import type { Point } from '../geometry/index.js';
import type { Source } from '../handbook/index.js';
import type { PatchOperation } from './patch.js';

/** `stop` withholds files, `caution` wants a look, `note` informs, `pass` folds into one line. */
export type Level = 'stop' | 'caution' | 'note' | 'pass';

/** The stage that found it. */
export type Stage = 'read' | 'draw' | 'check' | 'arrange' | 'plan' | 'estimate' | 'import' | 'learn';

/** Units that a finding's numbers carry; lengths are always mm here, whatever the screen shows. */
export type QuantityUnit =
  | 'mm'
  | 'mm2'
  | 'N'
  | 'N·m'
  | 'MPa'
  | 'kg'
  | 's'
  | 'degrees'
  | '1'
  | '%'
  | 'teeth'
  | 'links'
  | 'rpm'
  | 'km/h'
  | 'm/s'
  | 'W';

export interface Quantity {
  readonly amount: number;
  readonly unit: QuantityUnit;
  /** Half width of the range the amount is known to, same unit. */
  readonly plusMinus?: number;
}

export interface Subject {
  readonly rowId?: string;
  readonly featureId?: string;
  readonly plateId?: string;
  readonly placementId?: string;
}

/** A suggested edit. Paths are relative to the row's parameters until the job stage rebases them. */
export interface Remedy {
  /** The button's words, for example `Mark the holes and drill them`. */
  readonly says: string;
  readonly change: readonly PatchOperation[];
}

export interface Finding {
  /** Stable name of the rule, for example `edge-distance`. */
  readonly code: string;
  readonly level: Level;
  readonly stage: Stage;
  readonly subject: Subject;
  /** Where its balloon points, in the part's coordinates. */
  readonly anchor?: Point;
  /** The parameter that a person would change, as a dotted path. */
  readonly field?: string;
  /** The result in one line, for example `Edge distance 20 mm, 15 wanted`. */
  readonly title: string;
  /** What, how much, why it matters, what would do. */
  readonly says: string;
  readonly value?: Quantity;
  readonly limit?: Quantity;
  /** The formula with its numbers in it, so that a person can redo it by hand. */
  readonly formula?: string;
  readonly source: Source;
  readonly remedies?: readonly Remedy[];
}

/** Every stage returns its value with what it found. */
export interface Staged<T> {
  readonly value: T;
  readonly findings: readonly Finding[];
}

const SEVERITY: Readonly<Record<Level, number>> = { stop: 0, caution: 1, note: 2, pass: 3 };

/** Worst first; findings of one level keep the order in which the checks ran. */
export function sortFindings(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort((a, b) => SEVERITY[a.level] - SEVERITY[b.level]);
}
