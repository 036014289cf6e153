// What the hill asks for and how steep it may be, as numbers to read off.
import { digits, quantity } from '../checks/index.js';
import { gradeSource, gripGradeSource } from '../handbook/index.js';
import type { Worked } from './answer.js';
import type { Figure } from './figure.js';
import { tipFormula } from './hill.js';
import { mm, type Words } from './words.js';

export function hillFigures({ p, hill, pull }: Worked, w: Words): readonly Figure[] {
  if (hill === undefined) return [];
  const { weight, rolling, grip, share, asked } = hill;
  const limits = [
    ['grade-torque', 'Climbs by torque', hill.gradeByTorque, pull?.groundNewtons],
    ['grade-steady', 'Climbs without overheating', hill.gradeBySteadyTorque, pull?.steadyGroundNewtons],
  ] as const;
  return [
    ...(asked === undefined
      ? []
      : [
          {
            id: 'grade-force',
            group: 'Hill' as const,
            field: 'grade',
            title: `Pull wanted up ${w.share(asked.grade)}`,
            value: quantity(asked.newtons, 'N'),
            text: w.force(asked.newtons),
            formula: `${digits(weight, 0)} N × (sin θ + ${digits(rolling, 4)} cos θ), θ = arctan ${digits(asked.grade, 4)}: ${digits(asked.newtons, 0)} N`,
            source: gradeSource,
          },
          {
            id: 'hold-force',
            group: 'Hill' as const,
            title: 'Brakes hold it there with',
            value: quantity(asked.holdNewtons, 'N'),
            text: w.force(asked.holdNewtons),
            formula: `${digits(weight, 0)} N × sin θ = ${digits(asked.holdNewtons, 0)} N`,
            source: gradeSource,
          },
        ]),
    ...limits.flatMap(([id, title, grade, newtons]): readonly Figure[] =>
      grade === undefined || newtons === undefined
        ? []
        : [
            {
              id,
              group: 'Hill',
              title,
              value: quantity(grade * 100, '%'),
              text: w.share(Math.max(grade, 0)),
              formula: `tan(arcsin(${digits(newtons, 0)} cos φ ÷ ${digits(weight, 0)}) − φ), φ = arctan ${digits(rolling, 4)}`,
              source: gradeSource,
            },
          ],
    ),
    ...(hill.gradeByGrip === undefined || share === undefined
      ? []
      : [
          {
            id: 'grade-grip',
            group: 'Hill' as const,
            title: 'Climbs by grip',
            value: quantity(hill.gradeByGrip * 100, '%'),
            text: w.share(Math.max(hill.gradeByGrip, 0)),
            formula: gripFormula(p.drivenAxle, grip, share, rolling, p),
            source: gripGradeSource,
          },
        ]),
    ...(hill.tipsAt === undefined
      ? []
      : [
          {
            id: 'tips',
            group: 'Hill' as const,
            title: 'Front wheels lift at',
            value: quantity(hill.tipsAt * 100, '%'),
            text: w.share(hill.tipsAt),
            formula: tipFormula(p, hill),
            source: gripGradeSource,
          },
        ]),
  ];
}

function gripFormula(
  axle: 'rear' | 'front' | 'all',
  grip: number,
  share: number,
  rolling: number,
  { massHeight, wheelbase }: Worked['p'],
): string {
  const top = `${digits(grip)} × ${digits(share, 3)} − ${digits(rolling, 4)}`;
  if (axle === 'all' || massHeight === undefined || wheelbase === undefined) return top;
  const sign = axle === 'rear' ? '−' : '+';
  return `(${top}) ÷ (1 ${sign} ${digits(grip)} × ${mm(massHeight.mm)} ÷ ${mm(wheelbase.mm)})`;
}
