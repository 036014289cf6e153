// Judging teeth, tyre and speeds: few teeth, teeth that always meet the same links, readings that disagree.
import { digits, found, judge, quantity } from '../checks/index.js';
import {
  chordalSource,
  chordalVariation,
  FEWEST_TEETH,
  rollingRadiusSource,
  roadSpeedSource,
  SMOOTH_TEETH,
  type Source,
} from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { Worked } from './answer.js';
import { mm, shareText, type Words } from './words.js';

const PAIRING: Source = {
  title: 'Odd teeth with an even chain',
  where: 'each tooth then meets inner and outer links in turn and wears evenly',
  certainty: 'common practice',
};

/** Wheel speeds that agree within this are one reading: a stopwatch does no better. */
const AGREES = 0.03;

/** A tyre pressed flatter than this share of its radius is short of air; common practice. */
const FLAT = 0.12;

function checkTeeth({ p, line }: Worked): readonly Finding[] {
  const small = Math.min(p.motorTeeth, p.wheelTeeth);
  const field = p.motorTeeth <= p.wheelTeeth ? 'motorTeeth' : 'wheelTeeth';
  const swing = chordalVariation(small);
  const level = judge(['caution', small < FEWEST_TEETH], ['note', small < SMOOTH_TEETH]);
  const evenBoth = p.motorTeeth % 2 === 0 && line !== undefined && line.links % 2 === 0;
  return [
    found({
      code: 'few-teeth',
      level,
      field,
      title: `${small} teeth: the chain’s speed swings by ${shareText(swing)}`,
      says: {
        stop: '',
        caution: `The standards begin at ${FEWEST_TEETH} teeth. Fewer pulse hard, bend the links far and wear them fast.`,
        note: `From ${SMOOTH_TEETH} teeth it runs smoothly; with fewer it hums and wears sooner. Usual on carts, where room and ratio ask for it.`,
        pass: 'It runs smoothly.',
      }[level],
      value: quantity(small, 'teeth'),
      limit: quantity(level === 'caution' ? FEWEST_TEETH : SMOOTH_TEETH, 'teeth'),
      formula: `1 − cos(180° ÷ ${small}) = ${digits(swing * 100, 2)} %`,
      source: chordalSource,
    }),
    ...(evenBoth
      ? [
          found({
            code: 'odd-teeth',
            level: 'note',
            field: 'motorTeeth',
            title: `${p.motorTeeth} teeth on ${line.links} links: every tooth meets one kind of link`,
            says: `With an even count of both, a tooth meets inner links for ever, or outer ones. ${p.motorTeeth - 1} or ${p.motorTeeth + 1} teeth would share the wear.`,
            formula: `${p.motorTeeth} and ${line.links} are both even`,
            source: PAIRING,
          }),
        ]
      : []),
  ];
}

function checkTyre({ tyre, turning }: Worked, w: Words): readonly Finding[] {
  if (tyre === undefined) {
    return [
      found({
        code: 'not-checked',
        level: 'note',
        field: 'tyreDiameter',
        title: 'road speed and pull at the ground',
        says: 'Give the tyre’s diameter or its loaded radius.',
        source: roadSpeedSource,
      }),
    ];
  }
  if (turning.wheelRpm === undefined) {
    return [
      found({
        code: 'not-checked',
        level: 'note',
        field: 'motorSpeed',
        title: 'road speed',
        says: 'Give the motor’s speed or the wheel’s.',
        source: roadSpeedSource,
      }),
    ];
  }
  if (tyre.free === undefined) return [];
  if (tyre.from === 'diameter') {
    return [
      found({
        code: 'loaded-radius',
        level: 'note',
        field: 'loadedRadius',
        title: 'The tyre counts as if it stood without load',
        says: 'Loaded, a soft tyre stands some 5 to 10 % lower: it goes a little slower than this and pulls a little harder. Measure axle to floor with the load on.',
        value: quantity(tyre.free, 'mm'),
        formula: `${mm(2 * tyre.free)} ÷ 2 = ${mm(tyre.free)} mm`,
        source: rollingRadiusSource,
      }),
    ];
  }
  const squash = (tyre.free - tyre.loaded) / tyre.free;
  return [
    found({
      code: 'loaded-radius',
      level: squash > FLAT ? 'caution' : 'pass',
      field: 'loadedRadius',
      title: `The load presses the tyre ${shareText(squash)} lower`,
      says:
        squash > FLAT
          ? `More than ${shareText(FLAT)} is a tyre short of air or overloaded: it rolls heavily and its walls break. Look at pressure and load rating.`
          : `It pulls on ${w.length(tyre.loaded)} and rolls as ${w.length(tyre.rolling)}.`,
      value: quantity(tyre.loaded, 'mm'),
      limit: quantity(tyre.free * (1 - FLAT), 'mm'),
      formula: `(${mm(tyre.free)} − ${mm(tyre.loaded)}) ÷ ${mm(tyre.free)} = ${digits(squash * 100, 1)} %`,
      source: rollingRadiusSource,
    }),
  ];
}

function checkSpeeds({ p, turning }: Worked): readonly Finding[] {
  const { wheelRpm, wheelRpmByMotor, ratio } = turning;
  if (wheelRpm === undefined || wheelRpmByMotor === undefined || p.motorSpeed === undefined) return [];
  const off = wheelRpm / wheelRpmByMotor - 1;
  const agrees = Math.abs(off) <= AGREES;
  return [
    found({
      code: 'speeds-agree',
      level: agrees ? 'pass' : 'caution',
      field: 'wheelSpeed',
      title: agrees
        ? 'Motor speed and wheel speed agree'
        : `The wheel turns ${shareText(Math.abs(off))} ${off > 0 ? 'faster' : 'slower'} than the motor and teeth say`,
      says: agrees
        ? 'Within what a stopwatch can tell.'
        : 'A chain does not slip: a count of teeth, the gearbox or one of the speeds is wrong. The road speed here is from the wheel.',
      value: quantity(wheelRpm, 'rpm'),
      limit: quantity(wheelRpmByMotor, 'rpm'),
      formula: `${digits(p.motorSpeed.value)} rpm ÷ ${digits(ratio, 4)} = ${digits(wheelRpmByMotor, 1)} rpm`,
      source: roadSpeedSource,
    }),
  ];
}

export function checkTurning(worked: Worked, words: Words): readonly Finding[] {
  return [...checkTeeth(worked), ...checkSpeeds(worked), ...checkTyre(worked, words)];
}
