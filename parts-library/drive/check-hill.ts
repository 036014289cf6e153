// Judging the hill: by the motor's torque, by its heat, by the tyres' grip, and by tipping over backwards.
import { digits, found, judge, quantity } from '../checks/index.js';
import {
  gradeSource,
  gripGradeSource,
  gripSource,
  rollingSource,
  weakestSource,
  type Source,
} from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { Worked } from './answer.js';
import { tipFormula, type Hill } from './hill.js';
import type { Words } from './words.js';

/** Torque left over to pull away and to cross a stone, a share of what the grade takes; common practice. */
const TORQUE_TO_SPARE = 0.2;
/** Grip left over for a wet patch, likewise. */
const GRIP_TO_SPARE = 0.25;
/** Room kept to where the front wheels lift: a start or a bump throws the load back; common practice. */
const TIP_TO_SPARE = 2;

type Asked = NonNullable<Hill['asked']>;

const forceFormula = (hill: Hill, asked: Asked): string =>
  `${digits(hill.weight, 0)} N × (sin θ + ${digits(hill.rolling, 4)} cos θ) = ${digits(asked.newtons, 0)} N, tan θ = ${digits(asked.grade, 4)}`;

const rollingOf = ({ p }: Worked): Source =>
  p.rolling === undefined ? weakestSource(gradeSource, rollingSource) : gradeSource;

function checkTorque(worked: Worked, hill: Hill, asked: Asked, w: Words): readonly Finding[] {
  const { pull, p } = worked;
  if (pull?.groundNewtons === undefined || hill.gradeByTorque === undefined) return [];
  const { groundNewtons } = pull;
  const spare = groundNewtons / asked.newtons - 1;
  const level = judge(['stop', asked.grade > hill.gradeByTorque], ['caution', spare < TORQUE_TO_SPARE]);
  return [
    found({
      code: 'hill-torque',
      level,
      field: level === 'pass' ? 'grade' : 'wheelTeeth',
      title:
        level === 'stop'
          ? `It stalls on ${w.share(asked.grade)}: the motor climbs ${w.share(Math.max(hill.gradeByTorque, 0))}`
          : `The motor climbs ${w.share(hill.gradeByTorque)}, ${w.share(asked.grade)} asked`,
      says:
        level === 'pass'
          ? `${w.share(spare)} of the pull is to spare for pulling away. Greatest torque heats the motor; it lasts seconds.`
          : `Pull at the ground ${w.force(groundNewtons)}, wanted ${w.force(asked.newtons)}${level === 'caution' ? `: less than ${w.share(TORQUE_TO_SPARE)} is left to pull away with` : '; it rolls back unless it is held'}. A larger wheel sprocket, a smaller motor sprocket, less load or an easier line would do.`,
      value: quantity(groundNewtons, 'N'),
      limit: quantity(asked.newtons, 'N'),
      formula: `${digits(pull.wheelTorque)} N·m ÷ ${digits((worked.tyre?.loaded ?? 0) / 1000, 4)} m = ${digits(groundNewtons, 0)} N; ${forceFormula(hill, asked)}`,
      source: rollingOf(worked),
      ...(level === 'pass'
        ? {}
        : { remedies: moreTeeth(p.wheelTeeth, p.motorTeeth, (1 + TORQUE_TO_SPARE) / (1 + spare)) }),
    }),
  ];
}

/** Tooth counts that bring so many times the pull: a larger one behind, a smaller one in front. */
function moreTeeth(wheel: number, motor: number, times: number): NonNullable<Finding['remedies']> {
  const larger = Math.ceil(wheel * times);
  const smaller = Math.floor(motor / times);
  return [
    ...(larger <= 90
      ? [
          {
            says: `${larger} teeth on the wheel`,
            change: [{ op: 'add' as const, path: '/wheelTeeth', value: larger }],
          },
        ]
      : []),
    ...(smaller >= 9
      ? [
          {
            says: `${smaller} teeth on the motor`,
            change: [{ op: 'add' as const, path: '/motorTeeth', value: smaller }],
          },
        ]
      : []),
  ];
}

function checkSteady(worked: Worked, hill: Hill, asked: Asked, w: Words): readonly Finding[] {
  const { pull } = worked;
  if (pull?.steadyGroundNewtons === undefined || hill.gradeBySteadyTorque === undefined) return [];
  const enough = pull.steadyGroundNewtons >= asked.newtons;
  return [
    found({
      code: 'hill-heat',
      level: enough ? 'pass' : 'caution',
      field: 'steadyTorque',
      title: `It climbs ${w.share(Math.max(hill.gradeBySteadyTorque, 0))} without overheating, ${w.share(asked.grade)} asked`,
      says: enough
        ? 'It can go on climbing.'
        : 'It climbs this on the heat the motor can store: minutes at most, less after the last run. A lower gear, less load, or rests in between.',
      value: quantity(pull.steadyGroundNewtons, 'N'),
      limit: quantity(asked.newtons, 'N'),
      formula: `${digits(worked.p.steadyTorque?.value ?? 0)} N·m × ${digits(worked.turning.ratio, 4)} × ${digits(worked.p.efficiency.value)} % ÷ ${digits((worked.tyre?.loaded ?? 0) / 1000, 4)} m = ${digits(pull.steadyGroundNewtons, 0)} N; ${forceFormula(hill, asked)}`,
      source: rollingOf(worked),
    }),
  ];
}

function checkGrip(worked: Worked, hill: Hill, asked: Asked, w: Words): readonly Finding[] {
  const { p } = worked;
  if (asked.gripNewtons === undefined || hill.gradeByGrip === undefined) {
    return [
      found({
        code: 'not-checked',
        level: 'note',
        field: 'drivenMass',
        title: 'grip on the hill',
        says: 'Weigh what stands on the driven wheels: the tyres pull no harder than their grip.',
        source: gripSource,
      }),
    ];
  }
  const spare = asked.gripNewtons / asked.newtons - 1;
  const level = judge(['stop', asked.grade > hill.gradeByGrip], ['caution', spare < GRIP_TO_SPARE]);
  const shifted = p.wheelbase !== undefined && p.massHeight !== undefined;
  return [
    found({
      code: 'hill-grip',
      level,
      field: p.drivenAxle === 'all' ? 'ground' : 'drivenMass',
      title:
        level === 'stop'
          ? `The driven tyres slip on ${w.share(asked.grade)}: they hold ${w.share(Math.max(hill.gradeByGrip, 0))}`
          : `The tyres hold ${w.share(hill.gradeByGrip)}, ${w.share(asked.grade)} asked`,
      says: `${
        level === 'pass'
          ? `${w.share(spare)} of the grip is to spare.`
          : `Grip ${w.force(asked.gripNewtons)}, wanted ${w.force(asked.newtons)}. More of the load over the driven wheels, less load, or drier ground would do; more torque would not.`
      }${shifted || p.drivenAxle === 'all' ? '' : p.drivenAxle === 'rear' ? ' The load that shifts to the rear on the hill is not counted; with wheelbase and height it is.' : ' Front wheels lose load on the hill; give wheelbase and height, or this says too much.'}`,
      value: quantity(asked.gripNewtons, 'N'),
      limit: quantity(asked.newtons, 'N'),
      formula: `${digits(hill.grip)} × ${digits(asked.drivenNewtons ?? 0, 0)} N on the driven wheels there = ${digits(asked.gripNewtons, 0)} N; ${forceFormula(hill, asked)}`,
      source: p.grip === undefined ? weakestSource(gripGradeSource, gripSource) : gripGradeSource,
    }),
  ];
}

function checkTip(worked: Worked, hill: Hill, asked: Asked, w: Words): readonly Finding[] {
  if (hill.tipsAt === undefined) return [];
  const level = judge(
    ['stop', asked.grade >= hill.tipsAt],
    ['caution', asked.grade * TIP_TO_SPARE > hill.tipsAt],
  );
  return [
    found({
      code: 'tips-back',
      level,
      field: 'massHeight',
      title: `The front wheels lift at ${w.share(hill.tipsAt)}, ${w.share(asked.grade)} asked`,
      says:
        level === 'pass'
          ? 'Standing still. A jerky start, a bump or a load that slides back brings it nearer.'
          : `Standing still. A start, a bump or a load that slides back lifts them sooner; ${w.share(asked.grade * TIP_TO_SPARE)} at least is wanted. Load lower and farther forward, and reverse up steep places.`,
      value: quantity(asked.grade * 100, '%'),
      limit: quantity(hill.tipsAt * 100, '%'),
      formula: tipFormula(worked.p, hill),
      source: gripGradeSource,
    }),
  ];
}

export function checkHill(worked: Worked, words: Words): readonly Finding[] {
  const { hill, p } = worked;
  if (hill?.asked === undefined) {
    return [
      found({
        code: 'not-checked',
        level: 'note',
        field: p.mass === undefined ? 'mass' : 'grade',
        title: 'the hill',
        says: 'Give the mass and the grade.',
        source: gradeSource,
      }),
    ];
  }
  return [
    ...checkTorque(worked, hill, hill.asked, words),
    ...checkSteady(worked, hill, hill.asked, words),
    ...checkGrip(worked, hill, hill.asked, words),
    ...checkTip(worked, hill, hill.asked, words),
  ];
}
