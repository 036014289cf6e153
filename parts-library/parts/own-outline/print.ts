// Derived values, ghosts and steps of an own outline.
import type { Facts } from '../../checks/index.js';
import {
  isLine,
  isMark,
  isOpening,
  type Derived,
  type Ghost,
  type Part,
  type ShopStep,
} from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { DEBURR } from '../shared/weld-steps.js';
import { roundText } from '../shared/words.js';
import { holeGroups } from './groups.js';
import type { OwnOutline } from './parameters.js';
import { resolveOutline } from './resolve.js';

const some = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;

/** Where the part comes from, and how large it is made of what was drawn. */
export function ownOutlineDerived(part: Part, p: OwnOutline, { format }: DrawContext): readonly Derived[] {
  const answer = resolveOutline(p);
  if (!answer.ok) return [];
  const { name, unit, digest } = p.drawing.source;
  const { scale, bounds } = answer.value;
  const openings = part.features.filter(isOpening).length;
  const lines = part.features.filter((feature) => isLine(feature) && feature.name !== 'label').length;
  const marks = part.features.filter(isMark).length;
  const size = `${format.bare(bounds.maxX)} × ${format.length(bounds.maxY)}`;
  return [
    {
      id: 'source',
      title: 'drawing',
      value: { amount: openings + lines + marks + 1, unit: '1' },
      text: `${name}, in ${unit}, ${size}: ${some(openings, 'opening')}, ${some(lines, 'line')}, ${some(marks, 'mark')}; ${digest.slice(0, 8)}`,
    },
    ...(scale === 1
      ? []
      : [
          {
            id: 'scale',
            title: 'scale',
            value: { amount: scale, unit: '1' as const },
            text: `${roundText(scale * 100)} % of what was drawn`,
          },
        ]),
  ];
}

/** Most shapes shown beside the part. */
const MOST_SEEN = 40;

/** What is in the drawing and not made, so that a person sees it was not forgotten. */
export function ownOutlineGhosts(_part: Part, p: OwnOutline, _facts: Facts): readonly Ghost[] {
  const answer = resolveOutline(p);
  if (!answer.ok) return [];
  return answer.value.seen.slice(0, MOST_SEEN).map((path, index): Ghost => ({
    id: `seen.${index + 1}`,
    kind: 'mating-part',
    ...(index === 0 ? { label: 'drawn, not made' } : {}),
    shape: { path },
  }));
}

/** Pilot drilled on a punch mark before a larger drill, mm, and the drill from which it helps; common practice. */
const PILOT = 4;
const PILOTED_FROM = 7;

export function ownOutlineSteps(part: Part, p: OwnOutline, facts: Facts): readonly ShopStep[] {
  const { length } = facts.format;
  const drilled = holeGroups(part.features)
    .filter(({ made }) => made === 'drill')
    .map(({ size, featureIds }): ShopStep => ({
      kind: 'drill',
      says: `Punch ${featureIds.length} ${featureIds.length === 1 ? 'mark' : 'marks'}, ${size >= PILOTED_FROM ? `pilot ${length(PILOT)}, ` : ''}drill ${length(size)}.`,
      featureIds,
    }));
  const scored = part.features.filter(isLine).filter(({ purpose }) => purpose === 'score');
  const points = part.features.filter(isMark).filter(({ hole }) => hole === undefined);
  return [
    DEBURR,
    {
      kind: 'measure',
      says: `Measure overall width and height and one pair of holes against the drawing ${p.drawing.source.name}.`,
    },
    ...(points.length === 0
      ? []
      : [
          {
            kind: 'punch' as const,
            says: `Punch ${points.length} marks.`,
            featureIds: points.map(({ id }) => id),
          },
        ]),
    ...drilled,
    ...(scored.length === 0
      ? []
      : [
          {
            kind: 'bend' as const,
            says: `Fold on ${scored.length === 1 ? 'the scored line' : `${scored.length} scored lines`}; a fold that carries load is welded after.`,
            featureIds: scored.map(({ id }) => id),
          },
        ]),
  ];
}
