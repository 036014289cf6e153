// A number of a drive as it is read off: its words, the formula with its numbers in it, and its source.
import type { Source } from '../handbook/index.js';
import type { Derived } from '../model/index.js';

/** Under which heading a number stands. */
export type FigureGroup = 'Speed' | 'Chain line' | 'Pull' | 'Hill';

export interface Figure extends Derived {
  readonly group: FigureGroup;
  readonly formula: string;
  readonly source: Source;
}

export const gearing: Source = {
  title: 'Ratio of a chain drive',
  where: 'i = N ÷ n: as many teeth pass on one sprocket as on the other',
  certainty: 'common practice',
};

export const torquePull: Source = {
  title: 'Pull from torque',
  where: 'F = 2 T ÷ D; mechanics',
  certainty: 'common practice',
};
