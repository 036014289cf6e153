// Ratio, speeds and what the tyre rolls, as numbers to read off.
import { digits, quantity } from '../checks/index.js';
import { chordalSource, chordalVariation, roadSpeedSource, rollingRadiusSource } from '../handbook/index.js';
import { writeRotation } from '../units/index.js';
import type { Worked } from './answer.js';
import { gearing, type Figure } from './figure.js';
import { mm, type Words } from './words.js';

export function speedFigures({ p, turning, tyre, chainSpeed, choice }: Worked, w: Words): readonly Figure[] {
  const { chainRatio, ratio, wheelRpm, sprocketRpm, roadSpeed } = turning;
  const geared = p.reduction.value !== 1;
  return [
    {
      id: 'ratio',
      group: 'Speed',
      title: 'Ratio',
      value: quantity(ratio, '1'),
      text: `${digits(ratio, 3)} : 1`,
      formula: `${p.wheelTeeth} ÷ ${p.motorTeeth} = ${digits(chainRatio, 4)}${geared ? `, × ${digits(p.reduction.value, 4)} = ${digits(ratio, 4)}` : ''}`,
      source: gearing,
    },
    ...(wheelRpm === undefined || p.motorSpeed === undefined
      ? []
      : [
          {
            id: 'wheel-speed',
            group: 'Speed' as const,
            title: 'Wheel speed',
            value: quantity(wheelRpm, 'rpm'),
            text: writeRotation(wheelRpm),
            formula:
              p.wheelSpeed === undefined
                ? `${digits(p.motorSpeed.value)} rpm ÷ ${digits(ratio, 4)} = ${digits(wheelRpm, 1)} rpm`
                : `counted; the motor gives ${digits(p.motorSpeed.value)} ÷ ${digits(ratio, 4)} = ${digits(turning.wheelRpmByMotor ?? wheelRpm, 1)} rpm`,
            source: gearing,
          },
        ]),
    ...(roadSpeed === undefined || wheelRpm === undefined || tyre === undefined
      ? []
      : [
          {
            id: 'road-speed',
            group: 'Speed' as const,
            title: 'Road speed',
            value: quantity(roadSpeed, 'km/h'),
            text: w.roadSpeed(roadSpeed),
            formula: `${digits(wheelRpm, 1)} rpm × ${mm(2 * tyre.rolling)} mm ÷ 5305.16 = ${digits(roadSpeed)} km/h`,
            source: roadSpeedSource,
          },
        ]),
    ...(tyre?.from !== 'both' || tyre.free === undefined
      ? []
      : [
          {
            id: 'rolling-radius',
            group: 'Speed' as const,
            field: 'loadedRadius',
            title: 'Rolling radius',
            value: quantity(tyre.rolling, 'mm'),
            text: w.length(tyre.rolling),
            formula: `${mm(tyre.free)} − (${mm(tyre.free)} − ${mm(tyre.loaded)}) ÷ 3 = ${mm(tyre.rolling)} mm`,
            source: rollingRadiusSource,
          },
        ]),
    ...(chainSpeed === undefined || choice === undefined || sprocketRpm === undefined
      ? []
      : [
          {
            id: 'chain-speed',
            group: 'Speed' as const,
            title: 'Chain speed',
            value: quantity(chainSpeed, 'm/s'),
            text: w.chainSpeed(chainSpeed),
            formula: `${mm(choice.chain.pitch, 3)} mm × ${p.motorTeeth} × ${digits(sprocketRpm, 1)} rpm ÷ 60 000 = ${digits(chainSpeed, 3)} m/s`,
            source: gearing,
          },
        ]),
    {
      id: 'chordal',
      group: 'Speed',
      field: 'motorTeeth',
      title: 'Swing of the chain’s speed',
      value: quantity(chordalVariation(p.motorTeeth) * 100, '%'),
      text: w.share(chordalVariation(p.motorTeeth)),
      formula: `1 − cos(180° ÷ ${p.motorTeeth}) = ${digits(chordalVariation(p.motorTeeth), 4)}`,
      source: chordalSource,
    },
  ];
}
