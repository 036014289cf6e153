// Where the drawing's editable texts stand, so that a real control can be laid exactly over each.
import type { DisplayList, Text } from '../../parts-library/drawing/index.js';

/** A control's place over the drawing, CSS pixels: its centre, its size before turning, and its turn. */
export interface Place {
  readonly field: string;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly degrees: number;
  /** Height that takes a finger: as tall as a target where there is room, less where another text stands close. */
  readonly reach: number;
}

/** Touch target, and the least that is left of it between two close texts, CSS pixels. */
const TARGET = 44;
const LEAST = 24;

function placeOf(text: Text, field: string): Omit<Place, 'reach'> {
  const [a, b, c, d] = text.box;
  return {
    field,
    text: text.text,
    x: (a.x + b.x + c.x + d.x) / 4,
    y: (a.y + b.y + c.y + d.y) / 4,
    width: Math.hypot(b.x - a.x, b.y - a.y),
    height: Math.hypot(c.x - b.x, c.y - b.y),
    degrees: text.degrees,
  };
}

/** How tall a place's target may be without lying over the middle of a neighbour's. */
function reachOf(place: Omit<Place, 'reach'>, all: readonly Omit<Place, 'reach'>[]): number {
  const gaps = all
    .filter(
      (other) =>
        other.field !== place.field &&
        Math.abs(other.x - place.x) < (Math.max(TARGET, other.width) + Math.max(TARGET, place.width)) / 2,
    )
    .map((other) => Math.abs(other.y - place.y));
  return Math.max(LEAST, Math.min(TARGET, ...gaps));
}

/** One place per editable field, in the order in which a person measures. */
export function placesOf(list: DisplayList): readonly Place[] {
  const texts = new Map<string, Text>();
  for (const item of list.items) {
    if (item.kind === 'text' && item.field !== undefined && !texts.has(item.field))
      texts.set(item.field, item);
  }
  const places = list.tabOrder.flatMap((field) => {
    const text = texts.get(field);
    return text === undefined ? [] : [placeOf(text, field)];
  });
  return places.map((place) => ({ ...place, reach: reachOf(place, places) }));
}

/** Ids of the dimensions that edit a field: their lines light up with it. */
export function dimensionsOf(list: DisplayList, field: string | undefined): ReadonlySet<string> {
  const ids = new Set<string>();
  if (field === undefined) return ids;
  for (const item of list.items) {
    if (item.kind === 'text' && item.field === field && item.dimensionId !== undefined)
      ids.add(item.dimensionId);
  }
  return ids;
}

/** A corner of the drawing area. */
export interface Corner {
  readonly across: 'left' | 'right';
  readonly down: 'top' | 'bottom';
}

const CORNERS: readonly Corner[] = [
  { across: 'left', down: 'bottom' },
  { across: 'right', down: 'bottom' },
  { across: 'left', down: 'top' },
  { across: 'right', down: 'top' },
];

/** The corner where a card of this size covers least: texts count most, the focused place is never covered. */
export function freeCorner(
  list: DisplayList,
  card: { readonly width: number; readonly height: number },
  focused: string | undefined,
): Corner {
  const cost = (corner: Corner): number => {
    const left = corner.across === 'left' ? 0 : list.width - card.width;
    const top = corner.down === 'top' ? 0 : list.height - card.height;
    const inside = (x: number, y: number): boolean =>
      x >= left && x <= left + card.width && y >= top && y <= top + card.height;
    let sum = 0;
    for (const item of list.items) {
      if (item.kind === 'text') {
        if (item.box.some(({ x, y }) => inside(x, y))) sum += item.field === focused ? 1000 : 20;
      } else if (item.kind === 'balloon') sum += inside(item.at.x, item.at.y) ? 20 : 0;
      else {
        for (const command of item.path) {
          if (command[0] === 'Z') continue;
          const [x, y] = command[0] === 'A' ? [command[4], command[5]] : [command[1], command[2]];
          if (inside(x, y)) sum += 1;
        }
      }
    }
    return sum;
  };
  return CORNERS.reduce<{ readonly corner: Corner; readonly cost: number }>(
    (best, corner) => {
      const corners = cost(corner);
      return corners < best.cost ? { corner, cost: corners } : best;
    },
    { corner: { across: 'left', down: 'bottom' }, cost: Number.POSITIVE_INFINITY },
  ).corner;
}
