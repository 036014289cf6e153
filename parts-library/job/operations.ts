// The operation sequence of a part: from the torch to paint, in the order of a workshop, with the settings of each.
import type { ShopStep } from '../model/index.js';
import { writeClock, writeDecimal, writeSpeed } from '../units/index.js';
import type { PartRun, PartValue } from './run-part.js';

/** Said once wherever there is welding on bought or salvaged parts. */
const SALVAGE: ShopStep = {
  kind: 'caution',
  says: 'Salvaged parts: no chlorinated brake cleaner near an arc, its vapour becomes phosgene; strip zinc and cadmium plating well back, their fume is poisonous; open and vent every closed tube, and never weld one that held oil or gas.',
};

const PAINT: ShopStep = {
  kind: 'paint',
  says: 'Clean, prime and paint; mask bores, threads, bearing seats and faces that are bolted together.',
};

function cutStep(
  { part, figures, process }: PartValue,
  run: PartRun,
  lengths: (mm: number) => string,
): ShopStep {
  const { kerf, kerfPlusMinus, speed, pierceSeconds } = process.settings;
  const { seconds, pierces, marks } = figures;
  const order = part.features.some(({ purpose }) => purpose === 'score' || purpose === 'etch')
    ? 'marks and lines first, then openings, the outline last'
    : marks > 0
      ? 'marks first, then openings, the outline last'
      : 'openings first, the outline last';
  return {
    kind: 'cut',
    says: `Cut ${process.processClass}, ${lengths(part.thickness)} ${part.material}: ${order}. Kerf ${lengths(kerf)} ±${writeDecimal(kerfPlusMinus, 2)}, ${writeSpeed(speed, { unit: run.unit })}, pierce ${writeDecimal(pierceSeconds, 2)} s; ${pierces} ${pierces === 1 ? 'pierce' : 'pierces'}${marks > 0 ? `, ${marks} centre marks` : ''}, torch on ${writeClock(seconds.low)} to ${writeClock(seconds.high)} min.`,
  };
}

/**
 * Every operation on one part, in order: the cut with its settings, what the family does by hand, and paint. Where
 * something is welded, the cautions about salvaged parts stand before the first tack or weld.
 * @returns nothing for a run without a value
 */
export function operationsOf(run: PartRun): readonly ShopStep[] {
  const { value } = run;
  if (value === undefined) return [];
  const { format } = value.process.facts;
  const firstWeld = value.steps.findIndex(({ kind }) => kind === 'weld' || kind === 'tack');
  const byHand =
    firstWeld < 0
      ? value.steps
      : [...value.steps.slice(0, firstWeld), SALVAGE, ...value.steps.slice(firstWeld)];
  const isPainted = byHand.some(({ kind }) => kind === 'paint');
  return [cutStep(value, run, format.length), ...byHand, ...(isPainted ? [] : [PAINT])];
}
