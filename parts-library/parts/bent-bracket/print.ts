// Dimensions, ghost and steps of a bent bracket.
import type { Facts } from '../../checks/index.js';
import type { Derived, Dimension, Ghost, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { flatPatternOf } from './draw.js';
import type { BentBracket } from './parameters.js';

export function bentBracketDimensions(
  _part: Part,
  p: BentBracket,
  context: DrawContext,
): readonly Dimension[] {
  const flat = flatPatternOf(p);
  const half = p.width.mm / 2;
  const text = context.format.bare;
  const low = (x: number) => ({ x, y: -half });
  return [
    {
      id: 'width',
      kind: 'linear',
      along: 'y',
      from: low(flat.length),
      to: { x: flat.length, y: half },
      field: 'width',
      order: 1,
      text: text(p.width.mm),
    },
    {
      id: 'flat',
      kind: 'linear',
      along: 'x',
      from: low(0),
      to: low(flat.length),
      order: 2,
      text: `flat ${text(flat.length)}`,
    },
    {
      id: 'bendAt',
      kind: 'linear',
      along: 'x',
      from: { x: 0, y: half },
      to: { x: flat.bendAt, y: half },
      field: 'legA',
      order: 3,
      text: text(flat.bendAt),
    },
    {
      id: 'holeA',
      kind: 'linear',
      along: 'x',
      from: { x: 0, y: 0 },
      to: { x: p.holeA.mm, y: 0 },
      field: 'holeA',
      order: 4,
      text: text(p.holeA.mm),
    },
    {
      id: 'holeB',
      kind: 'linear',
      along: 'x',
      from: { x: flat.length - p.holeB.mm, y: 0 },
      to: { x: flat.length, y: 0 },
      field: 'holeB',
      order: 5,
      text: text(p.holeB.mm),
    },
    {
      id: 'bend',
      kind: 'leader',
      at: { x: flat.bendAt, y: half / 2 },
      field: 'bend',
      order: 6,
      text: `bend up ${Number(p.bend.value.toFixed(1))}° R${text(p.radius.mm)}`,
    },
    {
      id: 'holes',
      kind: 'leader',
      at: { x: p.holeA.mm, y: 0 },
      field: 'bolt',
      order: 7,
      text: `2 × ⌀${text(flat.hole)} for ${p.bolt}`,
    },
  ];
}

export function bentBracketDerived(_part: Part, p: BentBracket, { format }: DrawContext): readonly Derived[] {
  const flat = flatPatternOf(p);
  return [
    {
      id: 'flat',
      title: 'flat length',
      value: { amount: flat.length, unit: 'mm' },
      text: `${format.length(flat.length)}; the bend takes ${format.length(flat.allowance)} of it`,
    },
    {
      id: 'bendAt',
      title: 'bend line',
      value: { amount: flat.bendAt, unit: 'mm' },
      text: `${format.length(flat.bendAt)} from the first leg’s end`,
    },
  ];
}

/** The bent zone, where no hole may be. */
export function bentBracketGhosts(_part: Part, p: BentBracket, _facts: Facts): readonly Ghost[] {
  const flat = flatPatternOf(p);
  const half = p.width.mm / 2;
  return [-1, 1].map((side) => {
    const x = flat.bendAt + (side * flat.allowance) / 2;
    return {
      id: `bend.${side < 0 ? 'begins' : 'ends'}`,
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
  });
}

export function bentBracketSteps(_part: Part, p: BentBracket, facts: Facts): readonly ShopStep[] {
  const flat = flatPatternOf(p);
  return [
    { kind: 'deburr', says: 'Scrape dross, break the edges, above all across the bend.' },
    {
      kind: 'bend',
      says: `Bend up ${Number(p.bend.value.toFixed(1))}° at ${facts.format.length(flat.bendAt)} from the first leg’s end, inside radius ${facts.format.length(p.radius.mm)}.`,
      featureIds: ['bend'],
    },
    {
      kind: 'measure',
      says: 'Measure both legs of the first one before bending the rest; correct the K factor.',
    },
  ];
}
