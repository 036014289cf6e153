// Wear, links, centres, wrap, slack and travel of the tensioner, as numbers to read off.
import { digits, quantity } from '../checks/index.js';
import {
  centresSource,
  chainLengthSource,
  chainSagSource,
  chainSlackSource,
  chainWearSource,
  weakestSource,
  wrapSource,
} from '../handbook/index.js';
import type { Worked } from './answer.js';
import type { Figure } from './figure.js';
import { mm, type Words } from './words.js';

export function lineFigures({ p, choice, line }: Worked, w: Words): readonly Figure[] {
  if (choice === undefined) return [];
  const { chain, wear } = choice;
  const worn: readonly Figure[] =
    wear === undefined
      ? []
      : [
          {
            id: 'wear',
            group: 'Chain line',
            field: 'twelvePitches',
            title: 'Chain longer than new',
            value: quantity(wear.elongation * 100, '%', wear.plusMinus * 100),
            text: `${digits(wear.elongation * 100, 2)} %${wear.plusMinus > 0 ? ` ±${digits(wear.plusMinus * 100, 2)}` : ''}`,
            formula: `${mm(p.twelvePitches?.mm ?? 0)} ÷ (12 × ${mm(chain.pitch, 3)}) − 1 = ${digits(wear.elongation, 5)}`,
            source: chainWearSource,
          },
        ];
  if (line === undefined) return worn;
  const { links, centres, pitch, wrapSmall, span, wanted, takeUp, slack } = line;
  const small = Math.min(p.motorTeeth, p.wheelTeeth);
  const large = Math.max(p.motorTeeth, p.wheelTeeth);
  const limit = w.share(choice.limit.replace);
  return [
    ...worn,
    {
      id: 'links',
      group: 'Chain line',
      field: 'links',
      title: 'Links',
      value: quantity(links, 'links'),
      text: `${links}`,
      formula:
        line.exactLinks === undefined
          ? `${links} as counted`
          : `2C cos a + N(½ + a/180°) + n(½ − a/180°) = ${digits(line.exactLinks, 3)} pitches at C = ${digits((p.centres?.mm ?? 0) / pitch, 4)} pitches`,
      source: chainLengthSource,
    },
    {
      id: 'centres',
      group: 'Chain line',
      field: 'centres',
      title: 'Exact centre distance',
      value: quantity(centres, 'mm'),
      text: `${w.fine(centres)}${line.wornCentres === undefined ? '' : ` new, ${w.fine(line.wornCentres)} as worn`}`,
      formula: `${small} and ${large} teeth, ${links} links: C = ${digits(centres / pitch, 4)} pitches × ${mm(pitch, 3)} = ${mm(centres, 3)} mm`,
      source: chainLengthSource,
    },
    {
      id: 'wrap',
      group: 'Chain line',
      title: 'Wrap of the small sprocket',
      value: quantity(wrapSmall, 'degrees'),
      text: `${digits(wrapSmall, 1)}°, ${digits((small * wrapSmall) / 360, 1)} teeth`,
      formula: `180° − 2 arcsin((R − r) ÷ C) = ${digits(wrapSmall)}°`,
      source: wrapSource,
    },
    {
      id: 'span',
      group: 'Chain line',
      title: 'Straight strand',
      value: quantity(span, 'mm'),
      text: w.rough(span),
      formula: `${mm(line.mounted)} × sin(${digits(wrapSmall)}° ÷ 2) = ${mm(span)} mm`,
      source: chainLengthSource,
    },
    {
      id: 'movement',
      group: 'Chain line',
      title: 'Loose strand to move, up to down',
      value: quantity((wanted.least + wanted.reversing) / 2, 'mm', (wanted.reversing - wanted.least) / 2),
      text: `${w.roughBare(wanted.least)} to ${w.rough(wanted.reversing)}`,
      formula: `2 to 3 % of ${mm(span)} mm for a drive that brakes or reverses; to 6 % otherwise`,
      source: chainSlackSource,
    },
    ...(slack === undefined || slack.excess <= 0
      ? []
      : [
          {
            id: 'sag',
            group: 'Chain line' as const,
            title: 'It hangs by',
            value: quantity(slack.sag, 'mm'),
            text: `${w.rough(slack.sag)}, moves ${w.rough(slack.movement)}`,
            formula: `√(0.375 × ${mm(span)} × ${mm(slack.excess)}) = ${mm(slack.sag)} mm; √(2 × ${mm(span)} × ${mm(slack.excess)} + ${mm(slack.excess)}²) = ${mm(slack.movement)} mm`,
            source: chainSagSource,
          },
        ]),
    p.tensioner === 'idler'
      ? {
          id: 'take-up',
          group: 'Chain line',
          field: 'takeUp',
          title: `Idler travel to ${limit} wear`,
          value: quantity(takeUp.idlerForWear, 'mm'),
          text: w.rough(takeUp.idlerForWear),
          formula: `½ √(2 × ${mm(span)} × e + e²), e = ${links} × ${digits(choice.limit.replace, 4)} × ${mm(pitch, 3)} = ${mm(links * choice.limit.replace * pitch)} mm`,
          source: weakestSource(chainWearSource, chainSagSource),
        }
      : {
          id: 'take-up',
          group: 'Chain line',
          field: 'takeUp',
          title: `Centres move out to ${limit} wear`,
          value: quantity(takeUp.centresForWear, 'mm'),
          text: w.rough(takeUp.centresForWear),
          formula: `C at ${links} × (1 + ${digits(choice.limit.replace, 4)}) pitches less C at ${links} = ${mm(takeUp.centresForWear)} mm; from ${mm(takeUp.centresForTwoLinks)} mm two links can come out`,
          source: weakestSource(chainWearSource, chainLengthSource),
        },
    {
      id: 'least-centres',
      group: 'Chain line',
      title: 'Sprockets touch below',
      value: quantity(line.least, 'mm'),
      text: w.length(line.least),
      formula: `½ (OD ${small} + OD ${large}), OD = P (0.6 + cot(180° ÷ N)): ${mm(line.least)} mm`,
      source: centresSource,
    },
  ];
}
