// Dimensions, derived values, ghosts and steps of a bent bracket.
import type { Facts } from '../../checks/index.js';
import { boundsOf, transformContour } from '../../geometry/index.js';
import type { Derived, Dimension, Ghost, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { foldedProfile } from './folded.js';
import { holeDiameterOf, holesOf } from './holes.js';
import { flatPatternOf } from './profile.js';
import type { BentBracket } from './parameters.js';

const degreesText = (p: BentBracket): string => `${Number(p.bend.value.toFixed(1))}°`;

export function bentBracketDimensions(
  _part: Part,
  p: BentBracket,
  context: DrawContext,
): readonly Dimension[] {
  const flat = flatPatternOf(p);
  const half = p.width.mm / 2;
  const text = context.format.bare;
  const holes = holesOf(p, flat);
  const firstHole = holes.find(({ field }) => field === 'holeA');
  const lastHole = holes.find(({ field }) => field === 'holeB');
  let order = 0;
  const next = (): number => (order += 1);
  return [
    {
      id: 'width',
      kind: 'linear',
      along: 'y',
      from: { x: 0, y: -half },
      to: { x: 0, y: half },
      field: 'width',
      order: next(),
      text: text(p.width.mm),
    },
    {
      id: 'flat',
      kind: 'linear',
      along: 'x',
      from: { x: 0, y: -half },
      to: { x: flat.length, y: -half },
      order: next(),
      text: `flat ${text(flat.length)}`,
    },
    ...flat.bends.map(({ id, at }, index): Dimension => {
      const field = flat.legs[index]?.field;
      return {
        id: `${id}.at`,
        kind: 'linear',
        along: 'x',
        from: { x: 0, y: half },
        to: { x: at, y: half },
        ...(field === undefined ? {} : { field }),
        order: next(),
        text: text(at),
      };
    }),
    ...(firstHole === undefined
      ? []
      : [
          {
            id: 'holeA',
            kind: 'linear' as const,
            along: 'x' as const,
            from: { x: 0, y: firstHole.at.y },
            to: firstHole.at,
            field: 'holeA',
            order: next(),
            text: text(p.holeA.mm),
          },
        ]),
    ...(lastHole === undefined
      ? []
      : [
          {
            id: 'holeB',
            kind: 'linear' as const,
            along: 'x' as const,
            from: lastHole.at,
            to: { x: flat.length, y: lastHole.at.y },
            field: 'holeB',
            order: next(),
            text: text(p.holeB.mm),
          },
        ]),
    ...(['up', 'down'] as const).flatMap((direction): readonly Dimension[] => {
      const bends = flat.bends.filter((bend) => bend.direction === direction);
      const [first] = bends;
      if (first === undefined) return [];
      const how = p.made === 'scored' ? `, groove ${text(p.groove.mm)}` : ` R${text(p.radius.mm)}`;
      return [
        {
          id: `bend.${direction}`,
          kind: 'leader',
          at: { x: first.at, y: half / 2 },
          field: 'bend',
          order: next(),
          text: `${bends.length > 1 ? `${bends.length} × ` : ''}bend ${direction} ${degreesText(p)}${how}`,
        },
      ];
    }),
    ...(holes[0] === undefined
      ? []
      : [
          {
            id: 'holes',
            kind: 'leader' as const,
            at: holes[0].at,
            field: 'bolt',
            order: next(),
            text: `${holes.length} × ⌀${text(holeDiameterOf(p))} for ${p.bolt}`,
          },
        ]),
  ];
}

export function bentBracketDerived(_part: Part, p: BentBracket, { format }: DrawContext): readonly Derived[] {
  const flat = flatPatternOf(p);
  return [
    {
      id: 'flat',
      title: 'flat length',
      value: { amount: flat.length, unit: 'mm' },
      text: `${format.length(flat.length)}; each bend takes ${format.length(flat.allowance)} of it`,
    },
    ...flat.bends.map(({ id, at, direction }, index) => ({
      id,
      title: `bend ${index + 1}`,
      value: { amount: at, unit: 'mm' as const },
      text: `${direction}, ${format.length(at)} from the first end`,
    })),
  ];
}

/** Room between flat pattern and folded profile, as a share of the flat length: dimensions stand in it. */
const GHOST_GAP = 0.36;

/** Where each bend begins and ends, and the folded profile seen from its edge, under the flat pattern. */
export function bentBracketGhosts(_part: Part, p: BentBracket, _facts: Facts): readonly Ghost[] {
  const flat = flatPatternOf(p);
  const half = p.width.mm / 2;
  const zones = flat.bends.flatMap(({ id, at }): readonly Ghost[] =>
    [-1, 1].map((side) => {
      const x = at + (side * flat.allowance) / 2;
      return {
        id: `${id}.${side < 0 ? 'begins' : 'ends'}`,
        kind: 'folded',
        shape: {
          path: {
            vertices: [
              { x, y: -half, bulge: 0 },
              { x, y: half, bulge: 0 },
            ],
          },
        },
      };
    }),
  );
  const profile = foldedProfile(flat, p.bend.value, p.thickness.mm, { x: 0, y: 0 });
  if (profile === undefined) return zones;
  const { maxY } = boundsOf(profile);
  const under = transformContour(profile, { dy: -half - GHOST_GAP * flat.length - maxY });
  return [
    ...zones,
    { id: 'folded', kind: 'folded', label: 'folded, from its edge', shape: { contour: under } },
  ];
}

export function bentBracketSteps(_part: Part, p: BentBracket, facts: Facts): readonly ShopStep[] {
  const flat = flatPatternOf(p);
  const { length } = facts.format;
  return [
    {
      kind: 'deburr',
      says: 'Scrape dross, break the edges, above all across the bends: a notch there starts a crack.',
    },
    ...flat.bends.map(({ id, at, direction }): ShopStep => ({
      kind: 'bend',
      says: `Bend ${direction} ${degreesText(p)} at ${length(at)} from the first end${p.made === 'scored' ? ', folded on the groove' : `, inside radius ${length(p.radius.mm)}`}.`,
      featureIds: [id],
    })),
    ...(p.made === 'scored' && p.weldedAfter === 'yes'
      ? [
          {
            kind: 'weld' as const,
            says: 'Weld the grooves full after folding; grind the cut edges bright first.',
          },
        ]
      : []),
    {
      kind: 'measure',
      says: 'Measure all legs of the first one before bending the rest; correct the K factor or the allowance.',
    },
  ];
}
