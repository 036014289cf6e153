// Judging the chain itself: whether the readings name one, whether they agree with the one named, and how worn it is.
import { digits, found, quantity } from '../checks/index.js';
import { chainWearSource, PITCHES_MEASURED, type Source } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { Worked } from './answer.js';
import { alikeOf, type Candidate } from './identify.js';
import { mm, type Words } from './words.js';

const READ: Source = {
  title: 'Chain from width, roller and twelve pitches',
  where: 'the readings against every printed size; rollers are printed as the most, widths as the least',
  certainty: 'common practice',
};

const READINGS = [
  ['innerWidth', 'inner width'],
  ['roller', 'roller diameter'],
  ['twelvePitches', 'twelve pitches'],
] as const;

const FIELD_WORDS = Object.fromEntries(READINGS);

/** `08B: width +0.05, roller −0.01 mm, +0.53 % long`. */
function offWords({ chain, offWidth, offRoller, elongation }: Candidate): string {
  const signed = (value: number, decimals: number): string =>
    `${value < 0 ? '−' : '+'}${digits(Math.abs(value), decimals)}`;
  const words = [
    ...(offWidth === undefined ? [] : [`width ${signed(offWidth, 2)} mm`]),
    ...(offRoller === undefined ? [] : [`roller ${signed(offRoller, 2)} mm`]),
    ...(elongation === undefined ? [] : [`${signed(elongation * 100, 2)} % long`]),
  ];
  return `${chain.name}: ${words.join(', ')}`;
}

const namesOf = (candidates: readonly Candidate[]): string =>
  candidates.map(({ chain }) => chain.name).join(', ');

/** Which reading would tell chains of one pitch apart, where it is missing. */
function missingReading({ p }: Worked): string {
  const missing = READINGS.filter(([field]) => p[field] === undefined).map(([, words]) => words);
  return missing.length === 0
    ? 'The number stamped on the plates tells them apart.'
    : `Measure also the ${missing.join(' and the ')}.`;
}

function checkIdentified(worked: Worked): readonly Finding[] {
  const { candidates, choice } = worked;
  const [first] = candidates;
  if (first === undefined || choice?.from === 'name') return [];
  const formula = candidates.slice(0, 4).map(offWords).join('; ');
  const about = { code: 'chain-identified', field: 'chain', formula, source: READ } as const;
  if (choice === undefined) {
    return [
      found({
        ...about,
        level: 'caution',
        title: 'No chain held here has these sizes',
        says: `The nearest are ${namesOf(candidates)}. Measure again: width between the inner plates, over a roller (not over a plate), and twelve pitches from pin to pin.`,
      }),
    ];
  }
  const alike = alikeOf(candidates);
  if (alike.length === 1) {
    return [
      found({
        ...about,
        level: 'pass',
        title: `The readings are those of ${first.chain.name} (${first.chain.standard})`,
        says: 'No other chain held here is as near.',
      }),
    ];
  }
  const unknown = alike.filter(({ chain }) => chain.tensileNewtons === undefined);
  return [
    found({
      ...about,
      level: 'note',
      title: `The readings fit ${namesOf(alike)}`,
      says: `They share the pitch and nearly the rest. ${missingReading(worked)} Counted is with ${first.chain.name}, its strength with the least known among them${unknown.length === 0 ? '' : `; for ${namesOf(unknown)} no source held here gives one`}.`,
      remedies: alike.map(({ chain }) => ({
        says: `It is ${chain.name}`,
        change: [{ op: 'add', path: '/chain', value: chain.name }],
      })),
    }),
  ];
}

/** A chain that was named although what is measured is another one. */
function checkNamed({ p, candidates, choice }: Worked): readonly Finding[] {
  const [first] = candidates;
  if (first === undefined || choice?.from !== 'name') return [];
  const { name } = choice.chain;
  const named = candidates.find(({ chain, fits }) => chain.name === name && fits);
  const formula = (named === undefined ? candidates : [named]).slice(0, 4).map(offWords).join('; ');
  if (named !== undefined) {
    return [
      found({
        code: 'chain-readings',
        level: 'pass',
        field: 'chain',
        title: `The readings agree with ${name}`,
        says: 'Each lies where a chain of that number may.',
        formula,
        source: READ,
      }),
    ];
  }
  const fitting = candidates.filter(({ fits }) => fits);
  const read = READINGS.filter(([field]) => p[field] !== undefined).map(([field]) => FIELD_WORDS[field]);
  return [
    found({
      code: 'chain-readings',
      level: 'caution',
      field: 'chain',
      title: `The readings are not those of ${name}`,
      says: `${read.join(', ')} ${fitting.length === 0 ? 'fit no chain held here' : `fit ${namesOf(fitting)}`}. A chain on the wrong sprocket rides on its teeth and jumps. The numbers here are those of ${name}.`,
      formula,
      source: READ,
      remedies: fitting.slice(0, 3).map(({ chain }) => ({
        says: `Take ${chain.name}`,
        change: [{ op: 'add', path: '/chain', value: chain.name }],
      })),
    }),
  ];
}

function checkWear({ p, choice }: Worked, w: Words): readonly Finding[] {
  if (choice?.wear === undefined || p.twelvePitches === undefined) return [];
  const { elongation, plusMinus } = choice.wear;
  const { replace, never } = choice.limit;
  const most = elongation + plusMinus;
  // New chain is short by less than a sixth of a per cent; shorter means a slip of the caliper or another chain.
  if (elongation < -0.003 - plusMinus) return [];
  const level =
    elongation > never ? 'stop' : most >= replace ? 'caution' : most >= replace / 2 ? 'note' : 'pass';
  const percent = `${digits(elongation * 100, 2)} %${plusMinus > 0 ? ` ±${digits(plusMinus * 100, 2)}` : ''}`;
  const says = {
    stop: `Beyond ${w.share(never)} the rollers ride up the teeth of the larger sprocket and the chain may jump under load. Replace it, and look at the sprockets: hooked teeth ruin a new chain.`,
    caution: `It is replaced at ${w.share(replace)}${p.tensioner === 'none' ? ', since nothing takes the slack up' : ''}. ${elongation < replace ? 'The reading’s ± reaches there; measure again over more pitches. ' : ''}Look at the sprockets too: hooked teeth ruin a new chain.`,
    note: `Half of its life to ${w.share(replace)} is used.`,
    pass: `It is replaced at ${w.share(replace)}.`,
  }[level];
  return [
    found({
      code: 'chain-wear',
      level,
      field: 'twelvePitches',
      title: `Chain ${percent} longer than new, replaced at ${w.share(replace)}`,
      says,
      value: quantity(elongation * 100, '%', plusMinus * 100),
      limit: quantity((level === 'stop' ? never : replace) * 100, '%'),
      formula: `${mm(p.twelvePitches.mm)} mm ÷ (${PITCHES_MEASURED} × ${mm(choice.chain.pitch, 3)} mm) − 1 = ${digits(elongation * 100, 2)} %`,
      source: chainWearSource,
    }),
  ];
}

function checkKnown({ choice, candidates }: Worked): readonly Finding[] {
  return choice !== undefined || candidates.length > 0
    ? []
    : [
        found({
          code: 'not-checked',
          level: 'note',
          field: 'chain',
          title: 'the chain',
          says: 'Give its number, or measure inner width, roller and twelve pitches: then length, centres, wear and pull follow.',
          source: READ,
        }),
      ];
}

export function checkChain(worked: Worked, words: Words): readonly Finding[] {
  return [
    ...checkKnown(worked),
    ...checkIdentified(worked),
    ...checkNamed(worked),
    ...checkWear(worked, words),
  ];
}
