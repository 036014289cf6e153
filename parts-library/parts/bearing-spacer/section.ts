// The section through shaft, ring and both bearings that the print shows under the ring.
import type { Facts } from '../../checks/index.js';
import { polygonContour, type Contour } from '../../geometry/index.js';
import type { Ghost, Part } from '../../model/index.js';
import type { BearingSpacer } from './parameters.js';
import { boreOf, seatsOf, thicknessOf } from './sizes.js';

/** Room between ring and section, and the races' width and height in it, as shares of the outer race's inside. */
const APART = 0.36;
const RACE_HEIGHT = 0.16;
const RACE_WIDTH = 0.09;

export interface Section {
  /** Middle plane of the ring, mm. */
  readonly y: number;
  readonly thickness: number;
  readonly seat: number;
  readonly race: number;
  /** Outer end of the outer race, mm from the middle. */
  readonly reach: number;
}

/** Where the section lies and how large it is drawn. */
export function sectionOf(p: BearingSpacer): Section {
  const inside = p.outerShoulder.mm;
  const thickness = thicknessOf(p);
  const seats = seatsOf(p);
  const race = RACE_HEIGHT * inside;
  return {
    y: -p.outside.mm / 2 - APART * inside - race - thickness / 2,
    thickness,
    seat: seats.reduce((sum, { mm }) => sum + mm, 0) / seats.length,
    race,
    reach: inside / 2 + RACE_WIDTH * inside,
  };
}

const box = (fromX: number, toX: number, fromY: number, toY: number): Contour =>
  polygonContour(
    [
      { x: fromX, y: fromY },
      { x: toX, y: fromY },
      { x: toX, y: toY },
      { x: fromX, y: toY },
    ],
    { direction: 'outline' },
  );

/** Both halves of something that turns about the middle. */
const halves = (inner: number, outer: number, fromY: number, toY: number): readonly Contour[] => [
  box(inner, outer, fromY, toY),
  box(-outer, -inner, fromY, toY),
];

/** Shaft and races in plan, and the section with the seats under it. */
export function bearingSpacerGhosts(_part: Part, p: BearingSpacer, _facts: Facts): readonly Ghost[] {
  const { y, thickness, seat, race, reach } = sectionOf(p);
  const [shaft, inner, outer] = [p.shaft.mm / 2, p.innerShoulder.mm / 2, p.outerShoulder.mm / 2];
  const ring = { top: y + thickness / 2, bottom: y - thickness / 2 };
  const rib = { top: y + seat / 2, bottom: y - seat / 2 };
  const put = (
    id: string,
    kind: Ghost['kind'],
    contours: readonly Contour[],
    label?: string,
  ): readonly Ghost[] =>
    contours.map((contour, index) => ({
      id: `${id}.${index + 1}`,
      kind,
      shape: { contour },
      ...(label === undefined || index > 0 ? {} : { label }),
    }));
  const middle = { x: 0, y: 0 };
  return [
    { id: 'shaft', kind: 'hub', label: 'shaft', shape: { circle: { centre: middle, radius: shaft } } },
    {
      id: 'inner-race',
      kind: 'mating-part',
      label: 'inner race',
      shape: { circle: { centre: middle, radius: inner } },
    },
    {
      id: 'outer-race',
      kind: 'mating-part',
      label: 'outer race begins',
      shape: { circle: { centre: middle, radius: outer } },
    },
    ...put('section.ring', 'folded', halves(boreOf(p) / 2, p.outside.mm / 2, ring.bottom, ring.top)),
    ...put('section.inner-above', 'mating-part', halves(shaft, inner, ring.top, ring.top + race)),
    ...put('section.inner-below', 'mating-part', halves(shaft, inner, ring.bottom - race, ring.bottom)),
    ...put('section.outer-above', 'mating-part', halves(outer, reach, rib.top, rib.top + race)),
    ...put(
      'section.outer-below',
      'mating-part',
      halves(outer, reach, rib.bottom - race, rib.bottom),
      'outer race',
    ),
    ...put(
      'section.rib',
      'mating-part',
      halves((outer + reach) / 2, reach + (reach - outer) / 2, rib.bottom, rib.top),
    ),
  ];
}
