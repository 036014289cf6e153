// Dimensions, derived values and steps of a bearing spacer.
import type { Facts } from '../../checks/index.js';
import { bearingSpacer } from '../../handbook/index.js';
import type { Derived, Dimension, Format, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import type { Entry } from '../fields/index.js';
import { inOrder } from '../shared/in-order.js';
import type { BearingSpacer } from './parameters.js';
import { sectionOf } from './section.js';
import { boreOf, facesOf, seatsOf, thicknessOf } from './sizes.js';

const bareFine = (mm: number, { fine, unit }: Format): string => fine(mm).replace(` ${unit}`, '');

const listed = (entries: readonly Entry[], format: Format): string =>
  entries.map(({ mm }) => bareFine(mm, format)).join(' / ');

export function bearingSpacerDimensions(
  _part: Part,
  p: BearingSpacer,
  { format }: DrawContext,
): readonly Dimension[] {
  const { y, thickness, seat, race, reach } = sectionOf(p);
  const middle = { x: 0, y: 0 };
  const text = format.bare;
  const [inner, outer] = [p.innerShoulder.mm / 2, p.outerShoulder.mm / 2];
  return inOrder([
    {
      id: 'seats',
      kind: 'linear',
      along: 'y',
      from: { x: reach + (reach - outer) / 2, y: y - seat / 2 },
      to: { x: reach + (reach - outer) / 2, y: y + seat / 2 },
      field: 'seat1',
      text: `seats ${listed(seatsOf(p), format)}`,
    },
    {
      id: 'faces',
      kind: 'leader',
      at: { x: -p.outside.mm / 2, y: y + thickness / 4 },
      field: 'face1',
      text: `ring ${listed(facesOf(p), format)}`,
    },
    {
      id: 'shaft',
      kind: 'linear',
      along: 'x',
      from: { x: -p.shaft.mm / 2, y: y - thickness / 2 - race },
      to: { x: p.shaft.mm / 2, y: y - thickness / 2 - race },
      field: 'shaft',
      text: `shaft ⌀${bareFine(p.shaft.mm, format)}`,
    },
    {
      id: 'innerShoulder',
      kind: 'linear',
      along: 'x',
      from: { x: -inner, y: y - thickness / 2 - race },
      to: { x: inner, y: y - thickness / 2 - race },
      field: 'innerShoulder',
      text: `⌀${text(p.innerShoulder.mm)}`,
    },
    {
      id: 'outerShoulder',
      kind: 'linear',
      along: 'x',
      from: { x: -outer, y: y + seat / 2 + race },
      to: { x: outer, y: y + seat / 2 + race },
      field: 'outerShoulder',
      text: `⌀${text(p.outerShoulder.mm)}`,
    },
    {
      id: 'bore',
      kind: 'diameter',
      centre: middle,
      radius: boreOf(p) / 2,
      field: 'bore',
      text: `⌀${text(boreOf(p))}`,
    },
    {
      id: 'outside',
      kind: 'diameter',
      centre: middle,
      radius: p.outside.mm / 2,
      field: 'outside',
      text: `⌀${text(p.outside.mm)}`,
    },
  ]);
}

export function bearingSpacerDerived(
  _part: Part,
  p: BearingSpacer,
  { format: { fine } }: DrawContext,
): readonly Derived[] {
  const length = bearingSpacer(
    seatsOf(p).map(({ mm }) => mm),
    facesOf(p).map(({ mm }) => mm),
  );
  if (length === undefined) return [];
  const middle = (length.from + length.to) / 2;
  return [
    {
      id: 'wanted',
      field: 'seat1',
      title: 'length wanted',
      value: { amount: middle, unit: 'mm', plusMinus: Math.abs(length.to - length.from) / 2 },
      text:
        length.from <= length.to
          ? `${fine(length.from)} to ${fine(length.to)} at every place`
          : 'none: the seats are out of parallel by more than the rule allows',
    },
    {
      id: 'excess',
      field: 'face1',
      title: 'over the seats',
      value: { amount: (length.least + length.most) / 2, unit: 'mm' },
      text: `${fine(length.least)} at its shortest place, ${fine(length.most)} at its longest`,
    },
    {
      id: 'bore',
      field: 'bore',
      title: 'bore',
      value: { amount: boreOf(p), unit: 'mm' },
      text: `⌀${fine(boreOf(p))}, ${fine(boreOf(p) - p.shaft.mm)} over the shaft`,
    },
  ];
}

export function bearingSpacerSteps(_part: Part, p: BearingSpacer, { format }: Facts): readonly ShopStep[] {
  const { fine } = format;
  const seats = seatsOf(p).map(({ mm }) => mm);
  const length = bearingSpacer(
    seats,
    facesOf(p).map(({ mm }) => mm),
  );
  const wanted =
    length === undefined || length.from > length.to
      ? 'to the seats'
      : `to between ${fine(length.from)} and ${fine(length.to)}`;
  return [
    {
      kind: 'deburr',
      says: 'Scrape dross, stone every burr off both faces, inside and outside: a burr is longer than the whole allowance.',
    },
    {
      kind: 'grind',
      says: `Scale off; lap both faces on emery over glass, or surface grind, ${wanted}.`,
    },
    {
      kind: 'measure',
      says: `Micrometer at four places on the ring (${fine(thicknessOf(p))} now in the mean) and three on the seats, both clean and at room temperature; write them on the run sheet.`,
    },
    {
      kind: 'fit',
      says: 'Drop it over the shaft by its own weight; look that it bears on the inner races and moves clear of seal and cage.',
    },
    {
      kind: 'indicate',
      says: 'Bolt drawn up: the hub turns freely and without grit. If it goes stiff as the bolt is tightened, the spacer is short: stop and measure again.',
    },
  ];
}
