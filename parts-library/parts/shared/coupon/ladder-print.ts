// The dimensions that any ladder shows: slots, their pitch, the plate.
import type { Format } from '../../../model/index.js';
import type { DimensionSpec } from '../in-order.js';
import type { Ladder } from './ladder.js';

export interface LadderWords {
  /** What is dimensioned in the middle of the slots, mm, with its words and its parameter; and their width. */
  readonly straight: number;
  readonly straightWords: string;
  readonly slotWidth: number;
  readonly straightField: string;
  /** The parameter behind the etched settings, and how the settings are called out. */
  readonly settingField: string;
  readonly setting: (text: string) => string;
  readonly thickness: number;
}

/** Plate, slot, settings, thickness; in the order in which a person measures. */
export function ladderDimensions(
  { width, height, rungs, pitch, straight }: Ladder,
  words: LadderWords,
  { bare }: Format,
): readonly DimensionSpec[] {
  const [first] = rungs;
  const second = rungs[1];
  const last = rungs.at(-1);
  const middle = rungs[Math.floor(rungs.length / 2)];
  const counted = rungs.at(-2);
  if (first === undefined || last === undefined || middle === undefined || counted === undefined) return [];
  const half = words.straight / 2;
  const reach = straight / 2 + words.slotWidth / 2;
  return [
    {
      id: 'straight',
      kind: 'linear',
      along: 'x',
      from: { x: last.at.x - half, y: last.at.y },
      to: { x: last.at.x + half, y: last.at.y },
      field: words.straightField,
      text: `${bare(words.straight)} ${words.straightWords}`,
    },
    {
      id: 'slotWidth',
      kind: 'linear',
      along: 'y',
      from: { x: last.at.x + straight / 2, y: last.at.y - words.slotWidth / 2 },
      to: { x: last.at.x + straight / 2, y: last.at.y + words.slotWidth / 2 },
      field: 'slotWidth',
      text: bare(words.slotWidth),
    },
    ...(second === undefined
      ? []
      : [
          {
            id: 'pitch',
            kind: 'linear' as const,
            along: 'y' as const,
            from: { x: second.at.x + reach, y: second.at.y },
            to: { x: first.at.x + reach, y: first.at.y },
            text: bare(pitch),
          },
        ]),
    {
      id: 'setting',
      kind: 'leader',
      at: { x: middle.at.x + reach, y: middle.at.y },
      field: words.settingField,
      text: words.setting(middle.text),
    },
    {
      id: 'count',
      kind: 'leader',
      at: { x: counted.at.x + straight / 2, y: counted.at.y - words.slotWidth / 2 },
      field: 'rungs',
      text: `${rungs.length} slots`,
    },
    {
      id: 'width',
      kind: 'linear',
      along: 'x',
      from: { x: 0, y: 0 },
      to: { x: width, y: 0 },
      text: bare(width),
    },
    {
      id: 'height',
      kind: 'linear',
      along: 'y',
      from: { x: 0, y: 0 },
      to: { x: 0, y: height },
      text: bare(height),
    },
    {
      id: 'thickness',
      kind: 'leader',
      at: { x: width, y: height * 0.94 },
      field: 'thickness',
      text: `t ${bare(words.thickness)}`,
    },
  ];
}
