// Tabs on the straight edges of the guard: their place, flat length, hole and bend line.
import type { Line, Point } from '../../geometry/index.js';
import { bendAllowance, outsideSetback } from '../../handbook/index.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import { roundText } from '../shared/words.js';
import { directionOf, type Drive } from './drive.js';
import type { ChainGuard } from './parameters.js';

export interface Tab {
  readonly id: string;
  readonly edge: 'above' | 'below';
  /** Middle of its root on the edge, along and away from the guard. */
  readonly root: Point;
  readonly along: Point;
  readonly away: Point;
  /** How far it stands out of the edge in the flat, mm. */
  readonly length: number;
  readonly hole: Point;
  /** Middle of the bent zone from the edge, mm; bent tabs only. */
  readonly bend?: number;
}

/** The flat of a tab: straight part, and for a bent one where the bend lies. */
export interface TabFlat {
  readonly length: number;
  readonly bend?: { readonly begins: number; readonly ends: number; readonly setback: number };
}

/**
 * How far a tab stands out in the flat. A bent one begins to bend where its root radius ends, so that nothing of the
 * edge is in the bend: root + allowance + outside leg less one setback.
 *
 * @example leg 28, 2 mm, R 3, K 0.4, root 3: 3 + 5.969 + 28 − 5 = 31.969
 */
export function tabFlat(p: ChainGuard): TabFlat {
  if (p.tabsAre === 'flat') return { length: p.tabLength.mm };
  const allowance = bendAllowance(90, p.bendRadius.mm, p.thickness.mm, p.kFactor.value);
  const setback = outsideSetback(90, p.bendRadius.mm, p.thickness.mm);
  const begins = p.root.mm;
  return {
    length: begins + allowance + p.tabLength.mm - setback,
    bend: { begins, ends: begins + allowance, setback },
  };
}

/** Least straight edge beside a tab, mm, its root radius not counted. */
const BESIDE = 1;

function placeOn(
  p: ChainGuard,
  line: Line,
  edge: Tab['edge'],
  count: number,
  flat: TabFlat,
): Resolved<readonly Tab[]> {
  const along = directionOf(line);
  // The guard's metal is on the left of travel.
  const away = { x: along.y, y: -along.x };
  const length = Math.hypot(line.to.x - line.from.x, line.to.y - line.from.y);
  const share = length / Math.max(count, 1);
  const needed = p.tabWidth.mm + 2 * (p.root.mm + BESIDE);
  const field = edge === 'above' ? 'tabsAbove' : 'tabsBelow';
  if (count > 0 && share < needed) {
    return refusal(
      field,
      `${count} tabs ${roundText(p.tabWidth.mm)} mm wide do not fit on a straight edge of ${roundText(length)} mm; fewer or narrower ones would do.`,
    );
  }
  return {
    ok: true,
    value: Array.from({ length: count }, (_, index): Tab => {
      const at = (index + 0.5) * share;
      const root = { x: line.from.x + at * along.x, y: line.from.y + at * along.y };
      const out = flat.length - p.tabHole.mm;
      return {
        id: `tab.${edge}.${index + 1}`,
        edge,
        root,
        along,
        away,
        length: flat.length,
        hole: { x: root.x + out * away.x, y: root.y + out * away.y },
        ...(flat.bend === undefined ? {} : { bend: (flat.bend.begins + flat.bend.ends) / 2 }),
      };
    }),
  };
}

/** All tabs, in the order in which the outline passes them. */
export function tabsOf(p: ChainGuard, drive: Drive): Resolved<readonly Tab[]> {
  const flat = tabFlat(p);
  if (flat.bend !== undefined && p.tabLength.mm - flat.bend.setback < p.tabHole.mm + 1) {
    return refusal(
      'tabLength',
      `A leg of ${roundText(p.tabLength.mm)} mm has ${roundText(Math.max(p.tabLength.mm - flat.bend.setback, 0))} mm of straight after its bend; the hole alone stands ${roundText(p.tabHole.mm)} mm from its end.`,
    );
  }
  if (flat.length <= p.tabHole.mm) {
    return refusal(
      'tabHole',
      `A hole ${roundText(p.tabHole.mm)} mm from the end of a tab of ${roundText(flat.length)} mm stands in the guard itself; nearer the end would do.`,
    );
  }
  const most = Math.min(p.tabWidth.mm / 2, flat.length - p.root.mm) - 0.01;
  if (p.root.mm > flat.length / 2 || most <= 0) {
    return refusal(
      'root',
      `A root radius of ${roundText(p.root.mm)} mm uses up a tab of ${roundText(flat.length)} mm.`,
    );
  }
  const above = placeOn(p, drive.above, 'above', p.tabsAbove, flat);
  if (!above.ok) return above;
  const below = placeOn(p, drive.below, 'below', p.tabsBelow, flat);
  return below.ok ? { ok: true, value: [...above.value, ...below.value] } : below;
}

/** Radius of a tab's outer corners, mm: a quarter of its width, and never more than its straight length takes. */
export const tabCorner = (p: ChainGuard, length: number): number =>
  Math.min(p.tabWidth.mm / 4, (length - p.root.mm) / 2);
