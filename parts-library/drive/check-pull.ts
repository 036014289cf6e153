// Judging the pull: the chain's strength over what the motor can pull with.
import { digits, found, judge, quantity } from '../checks/index.js';
import { pitchDiameter, weakestSource, type Source } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { Worked } from './answer.js';
import { tensileOf } from './chain-choice.js';
import type { Words } from './words.js';

/** Six in service, two never: as the chain's service load has it. */
const SAFETY = { service: 6, never: 2 } as const;

const UNKNOWN: Source = {
  title: 'Chain pull against strength',
  where: 'service load at most 1/6 of the minimum tensile strength',
  certainty: 'published',
};

const unknown = (field: string, title: string, says: string): readonly Finding[] => [
  found({ code: 'chain-strength', level: 'note', field, title, says, source: UNKNOWN }),
];

export function checkPull({ p, choice, pull }: Worked, w: Words): readonly Finding[] {
  if (pull === undefined) {
    return [
      found({
        code: 'not-checked',
        level: 'note',
        field: 'motorTorque',
        title: 'chain pull and climbing',
        says: 'Give the motor’s greatest torque.',
        source: UNKNOWN,
      }),
    ];
  }
  if (choice === undefined || pull.chainNewtons === undefined) return [];
  const tensile = tensileOf(choice);
  if (choice.load === undefined || tensile === undefined || pull.safety === undefined) {
    return unknown(
      'chain',
      `Pull ${w.force(pull.chainNewtons)} against the strength of ${choice.chain.name}: unknown`,
      `No source held here gives the tensile strength of ${choice.chain.name}. Take it from the maker: ${w.force(pull.chainNewtons * SAFETY.service)} at least is wanted, six times the pull.`,
    );
  }
  const { safety } = pull;
  const level = judge(['stop', safety < SAFETY.never], ['caution', safety < SAFETY.service]);
  const pd = pitchDiameter(choice.chain.pitch, p.motorTeeth);
  const wanted = choice.load.newtons;
  return [
    found({
      code: 'chain-strength',
      level,
      field: 'chain',
      title: `Factor of safety ${digits(safety, 1)} against the strength of ${choice.chain.name}, ${SAFETY.service} wanted`,
      says:
        level === 'pass'
          ? `The motor’s greatest torque pulls with ${w.force(pull.chainNewtons)}; ${w.force(wanted)} is the service load.`
          : `The motor’s greatest torque pulls with ${w.force(pull.chainNewtons)}; the service load is ${w.force(wanted)}, one sixth of the least tensile strength${level === 'stop' ? ', and above one half a chain is not pulled even once' : ''}. A larger motor sprocket, a heavier chain or a lower current limit would do.`,
      value: quantity(safety, '1'),
      limit: quantity(SAFETY.service, '1'),
      formula: `F = 2 T ÷ PD = 2 × ${digits(pull.sprocketTorque)} N·m ÷ ${digits(pd / 1000, 5)} m = ${digits(pull.chainNewtons, 0)} N; ${digits(tensile, 0)} N ÷ ${digits(pull.chainNewtons, 0)} N = ${digits(safety, 2)}`,
      source: weakestSource(choice.load.source, choice.load.strengthSource),
    }),
  ];
}
