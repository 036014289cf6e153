// Chain pull, torque at the wheel, pull at the ground, as numbers to read off.
import { digits, quantity } from '../checks/index.js';
import { pitchDiameter, sprocketFormulas, weakestSource } from '../handbook/index.js';
import type { Worked } from './answer.js';
import { gearing, torquePull, type Figure } from './figure.js';
import { mm, type Words } from './words.js';

export function pullFigures(
  { p, choice, pull, turning, tyre, chainSpeed }: Worked,
  w: Words,
): readonly Figure[] {
  if (pull === undefined) return [];
  const diameter = choice === undefined ? undefined : pitchDiameter(choice.chain.pitch, p.motorTeeth);
  return [
    ...(pull.chainNewtons === undefined || diameter === undefined
      ? []
      : [
          {
            id: 'chain-pull',
            group: 'Pull' as const,
            title: 'Chain pull at most',
            value: quantity(pull.chainNewtons, 'N'),
            text: w.force(pull.chainNewtons),
            formula: `2 × ${digits(pull.sprocketTorque)} N·m ÷ ${digits(diameter / 1000, 5)} m = ${digits(pull.chainNewtons, 0)} N; PD = ${mm(choice?.chain.pitch ?? 0, 3)} ÷ sin(180° ÷ ${p.motorTeeth})`,
            source: weakestSource(torquePull, sprocketFormulas),
          },
        ]),
    {
      id: 'wheel-torque',
      group: 'Pull',
      title: 'Torque at the wheel',
      value: quantity(pull.wheelTorque, 'N·m'),
      text: w.torque(pull.wheelTorque),
      formula: `${digits(p.motorTorque?.value ?? 0)} N·m × ${digits(turning.ratio, 4)} × ${digits(p.efficiency.value)} % = ${digits(pull.wheelTorque)} N·m`,
      source: gearing,
    },
    ...(pull.groundNewtons === undefined || tyre === undefined
      ? []
      : [
          {
            id: 'ground-pull',
            group: 'Pull' as const,
            title: 'Pull at the ground',
            value: quantity(pull.groundNewtons, 'N'),
            text: w.force(pull.groundNewtons),
            formula: `${digits(pull.wheelTorque)} N·m ÷ ${digits(tyre.loaded / 1000, 4)} m = ${digits(pull.groundNewtons, 0)} N`,
            source: torquePull,
          },
        ]),
    ...(chainSpeed === undefined || pull.chainNewtons === undefined
      ? []
      : [
          {
            id: 'power',
            group: 'Pull' as const,
            title: 'Power, if it had that torque at that speed',
            value: quantity(pull.chainNewtons * chainSpeed, 'W'),
            text: w.power(pull.chainNewtons * chainSpeed),
            formula: `${digits(pull.chainNewtons, 0)} N × ${digits(chainSpeed, 3)} m/s; a motor seldom has both at once`,
            source: torquePull,
          },
        ]),
  ];
}
