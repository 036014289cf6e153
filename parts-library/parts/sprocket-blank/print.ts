// Dimensions of a sprocket blank in the order of measuring, and the ghosts of sprocket, chain and bolts.
import type { Facts } from '../../checks/index.js';
import type { Point } from '../../geometry/index.js';
import { maxHubDiameter, outsideDiameter } from '../../handbook/index.js';
import type { Derived, Dimension, Ghost, Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { inOrder } from '../shared/in-order.js';
import { patternDerived } from '../shared/pattern-derived.js';
import { circleDimensions, patternCallOut, withinText } from '../shared/pattern-dimensions.js';
import { patternGhosts } from '../shared/pattern-ghosts.js';
import { chainGhosts } from '../shared/sprocket/chain-ghosts.js';
import type { SprocketBlank } from './parameters.js';
import { resolveBlank } from './resolve.js';

const MIDDLE = { x: 0, y: 0 };

const polar = (radius: number, degrees: number): Point => ({
  x: radius * Math.cos((degrees * Math.PI) / 180),
  y: radius * Math.sin((degrees * Math.PI) / 180),
});

export function sprocketBlankDimensions(
  _part: Part,
  p: SprocketBlank,
  context: DrawContext,
): readonly Dimension[] {
  const answer = resolveBlank(p);
  if (!answer.ok) return [];
  const { pattern, pilot, outside, edge } = answer.value;
  const { bare } = context.format;
  const holes = pattern.pattern.holes;
  const called = holes[Math.min(1, holes.length - 1)];
  const edged = holes[holes.length > 3 ? 3 : 0];
  const edgeDegrees = edged === undefined ? 0 : (Math.atan2(edged.at.y, edged.at.x) * 180) / Math.PI;
  return inOrder([
    ...circleDimensions(pattern, context, () => 0),
    called === undefined
      ? undefined
      : {
          id: 'bolts',
          kind: 'leader',
          at: called.at,
          field: 'bolt',
          text: patternCallOut(pattern, context),
        },
    p.clocking.value === 90
      ? undefined
      : {
          id: 'clocking',
          kind: 'angle',
          centre: MIDDLE,
          radius: pattern.circle.diameter / 2,
          fromDegrees: 0,
          toDegrees: p.clocking.value,
          field: 'clocking',
          text: `${Number(p.clocking.value.toFixed(2))}°`,
        },
    pilot === undefined
      ? undefined
      : {
          id: 'pilot',
          kind: 'diameter',
          centre: MIDDLE,
          radius: pilot.drawn / 2,
          field: 'bore',
          text:
            p.pilot === 'bored'
              ? `cut ⌀${bare(pilot.drawn)}, bore to ⌀${bare(pilot.finished)}`
              : `⌀${bare(pilot.finished)}`,
        },
    {
      id: 'outside',
      kind: 'diameter',
      centre: MIDDLE,
      radius: outside / 2,
      field: 'outside',
      text: `⌀${bare(outside)}`,
    },
    edged === undefined
      ? undefined
      : {
          id: 'edge',
          kind: 'linear',
          along: 'aligned',
          from: edged.at,
          to: polar(outside / 2, edgeDegrees),
          field: 'edge',
          text: bare(edge),
        },
    {
      id: 'thickness',
      kind: 'leader',
      at: polar(outside / 2, -50),
      field: 'thickness',
      text: `t ${withinText(context, p.thickness.mm, p.thickness.plusMinus)}`,
    },
  ]);
}

/** Sprocket, chain, bolts, and the sprocket's bore. */
export function sprocketBlankGhosts(_part: Part, p: SprocketBlank, facts: Facts): readonly Ghost[] {
  const answer = resolveBlank(p);
  if (!answer.ok) return [];
  const { chain, pattern } = answer.value;
  return [
    {
      id: 'sprocket',
      kind: 'mating-part',
      label: `sprocket, ${p.teeth} teeth`,
      shape: { circle: { centre: MIDDLE, radius: outsideDiameter(chain.pitch, p.teeth) / 2 } },
    },
    ...chainGhosts(chain, p.teeth, facts.format),
    ...patternGhosts([pattern]),
    ...(p.boltedBore === undefined
      ? []
      : [
          {
            id: 'sprocket.bore',
            kind: 'mating-part' as const,
            label: `sprocket’s bore ⌀${facts.format.bare(p.boltedBore.mm)}`,
            shape: { circle: { centre: MIDDLE, radius: p.boltedBore.mm / 2 } },
          },
        ]),
  ];
}

export function sprocketBlankDerived(
  _part: Part,
  p: SprocketBlank,
  context: DrawContext,
): readonly Derived[] {
  const answer = resolveBlank(p);
  if (!answer.ok) return [];
  const { chain, pattern, outside, edge } = answer.value;
  const { length } = context.format;
  const limit = maxHubDiameter(chain.pitch, p.teeth);
  return [
    patternDerived(pattern, context, 'bolt circle'),
    {
      id: 'outside',
      field: 'outside',
      title: 'outside',
      value: { amount: outside, unit: 'mm' },
      text: `⌀${length(outside)}, ${length(edge)} from the bolts; beside ${p.teeth} teeth of ${chain.name} at most ⌀${length(limit)}`,
    },
    {
      id: 'grip',
      field: 'sprocketThickness',
      title: 'bolts grip',
      value: { amount: p.sprocketThickness.mm + p.thickness.mm + p.flangeThickness.mm, unit: 'mm' },
      text: `${length(p.sprocketThickness.mm + p.thickness.mm + p.flangeThickness.mm)}: sprocket, blank and flange`,
    },
  ];
}
