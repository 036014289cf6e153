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
}

function placeOf(text: Text, field: string): Place {
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

/** One place per editable field, in the order in which a person measures. */
export function placesOf(list: DisplayList): readonly Place[] {
  const texts = new Map<string, Text>();
  for (const item of list.items) {
    if (item.kind === 'text' && item.field !== undefined && !texts.has(item.field))
      texts.set(item.field, item);
  }
  return list.tabOrder.flatMap((field) => {
    const text = texts.get(field);
    return text === undefined ? [] : [placeOf(text, field)];
  });
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
