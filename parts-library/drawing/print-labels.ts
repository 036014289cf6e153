// The labels of a print in the order in which they choose their places: dimensions, call-outs, balloons, the
// scale bar, and last the names of ghosts, which may be left out.
import type { Dimension, Ghost } from '../model/index.js';
import { measureWords, type Desk, type Words } from './desk.js';
import { listOptions, moreOptions, type Label, type Options } from './labels.js';
import { spanOf } from './linear-frame.js';
import { angleOptions } from './place-angle.js';
import { balloonOptions, type Numbered } from './place-balloon.js';
import { latticeOptions, leaderOptions, type LeaderText } from './place-leader.js';
import { linearOptions } from './place-linear.js';
import { scaleBarOptions } from './scale-bar.js';
import { ghostTips, leaderTips, nearestTip, roundTipFor, roundTips } from './tips.js';

/** A ghost's name is worth this much trouble, in font sizes of leader length. */
const WORTH_OF_GHOST_LABEL = 26;
const WORTH_OF_SCALE_BAR = 600;

const wordsOf = (dimension: Dimension, desk: Desk): Words =>
  measureWords(dimension.text, desk.style.size, 'dimension', {
    dimensionId: dimension.id,
    ...(dimension.field === undefined ? {} : { field: dimension.field }),
  });

function optionsOf(desk: Desk, dimension: Dimension): Options {
  const words = wordsOf(dimension, desk);
  if (dimension.kind === 'linear') return linearOptions(desk, words, dimension);
  if (dimension.kind === 'angle') return angleOptions(desk, words, dimension);
  const { tips, plan, ending } =
    dimension.kind === 'leader' ? leaderTips(desk, dimension) : roundTips(desk, dimension);
  return leaderOptions(desk, { words, ending, owner: { dimensionId: dimension.id } }, tips, plan);
}

/** Options all over the sheet for a dimension that found none near by. */
function farOptions(desk: Desk, dimension: Dimension): Options {
  if (dimension.kind === 'linear' || dimension.kind === 'angle') return listOptions([]);
  const leader: LeaderText = {
    words: wordsOf(dimension, desk),
    ending: 'arrow',
    owner: { dimensionId: dimension.id },
  };
  if (dimension.kind !== 'leader') return latticeOptions(desk, leader, roundTipFor(desk, dimension));
  const { tips, ending } = leaderTips(desk, dimension);
  return latticeOptions(desk, { ...leader, ending }, nearestTip(tips));
}

/** Angles and lines first, short before long, so that short dimensions stand nearest the part; then leaders. */
function inPlacingOrder(desk: Desk, dimensions: readonly Dimension[]): readonly Dimension[] {
  const rank = (dimension: Dimension): number => {
    if (dimension.kind === 'linear') return 1 + spanOf(desk, dimension) * 1e-6;
    if (dimension.kind === 'angle') return 0;
    return 'degrees' in dimension && dimension.degrees !== undefined ? 2 : 3;
  };
  return dimensions
    .map((dimension) => ({ dimension, rank: rank(dimension) }))
    .toSorted((a, b) => a.rank - b.rank || a.dimension.order - b.dimension.order)
    .map(({ dimension }) => dimension);
}

function ghostLabel(desk: Desk, ghost: Ghost): readonly Label[] {
  if (ghost.label === undefined || ghost.label === '') return [];
  const pieces =
    desk.scene.shapes.find(({ ghostId }) => ghostId === ghost.id)?.pieces ?? weldPieces(desk, ghost);
  const words = measureWords(ghost.label, desk.style.small, 'ghost');
  const { tips, plan, ending } = ghostTips(desk, pieces);
  const options = leaderOptions(desk, { words, ending, owner: { ghostId: ghost.id } }, tips, plan);
  return [{ id: ghost.id, dropAbove: WORTH_OF_GHOST_LABEL, options }];
}

const weldPieces = ({ scene }: Desk, ghost: Ghost) =>
  scene.welds
    .filter(({ id }) => id === ghost.id)
    .map(({ x, y, radius }) => ({ kind: 'arc', x, y, radius, start: 0, sweep: 2 * Math.PI }) as const);

export interface LabelRequest {
  readonly dimensions: readonly Dimension[];
  readonly ghosts: readonly Ghost[];
  readonly numbered: readonly Numbered[];
  readonly unit: 'mm' | 'in';
}

/** All labels at one scale, in the order in which they choose. */
export function makeLabels(desk: Desk, request: LabelRequest): readonly Label[] {
  return [
    ...inPlacingOrder(desk, request.dimensions).map((dimension): Label => ({
      id: dimension.id,
      dropAbove: Infinity,
      options: optionsOf(desk, dimension),
    })),
    ...request.numbered
      .filter(({ finding }) => finding.anchor !== undefined)
      .map((numbered): Label => ({
        id: `balloon ${numbered.number}`,
        dropAbove: Infinity,
        options: balloonOptions(desk, numbered),
      })),
    { id: 'scale bar', dropAbove: WORTH_OF_SCALE_BAR, options: scaleBarOptions(desk, request.unit) },
    ...request.ghosts.flatMap((ghost) => ghostLabel(desk, ghost)),
  ];
}

/** The same labels with options all over the sheet for those that collide. */
export function widenLabels(
  desk: Desk,
  request: LabelRequest,
  labels: readonly Label[],
  colliding: readonly number[],
): readonly Label[] {
  return labels.map((label, i) => {
    const dimension = request.dimensions.find(({ id }) => id === label.id);
    if (dimension === undefined || !colliding.includes(i)) return label;
    return { ...label, options: moreOptions(label.options, farOptions(desk, dimension)) };
  });
}
