// What the print of a chain guard shows to be measured and edited, in the order in which a person measures.
import { boundsOf, type Point } from '../../geometry/index.js';
import { outlineOf, type Dimension, type Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { holeCallOut } from '../shared/holes.js';
import { inOrder, type DimensionSpec } from '../shared/in-order.js';
import { thicknessLeader } from '../shared/thickness-leader.js';
import type { ChainGuard } from './parameters.js';
import { resolveGuard, type ResolvedGuard } from './resolve.js';
import type { Tab } from './tabs.js';
import { windowMiddle } from './window.js';

/** A place on a tab: along its edge, and away from the guard. */
const onTab = (tab: Tab, u: number, v: number): Point => ({
  x: tab.root.x + u * tab.along.x + v * tab.away.x,
  y: tab.root.y + u * tab.along.y + v * tab.away.y,
});

function tabDimensions(
  p: ChainGuard,
  r: ResolvedGuard,
  { format }: DrawContext,
): readonly (DimensionSpec | undefined)[] {
  const [tab] = r.tabs;
  const last = r.tabs.at(-1);
  if (tab === undefined || last === undefined) return [];
  const half = p.tabWidth.mm / 2;
  return [
    {
      id: 'tabWidth',
      kind: 'linear',
      along: 'aligned',
      from: onTab(tab, -half, tab.length),
      to: onTab(tab, half, tab.length),
      field: 'tabWidth',
      text: format.bare(p.tabWidth.mm),
    },
    {
      id: 'tabLength',
      kind: 'linear',
      along: 'aligned',
      from: onTab(tab, half, 0),
      to: onTab(tab, half, tab.length),
      ...(p.tabsAre === 'flat' ? { field: 'tabLength' } : {}),
      text: p.tabsAre === 'flat' ? format.bare(tab.length) : `flat ${format.bare(tab.length)}`,
    },
    {
      id: 'tabHole',
      kind: 'linear',
      along: 'aligned',
      from: tab.hole,
      to: onTab(tab, 0, tab.length),
      field: 'tabHole',
      text: format.bare(p.tabHole.mm),
    },
    {
      id: 'holes',
      kind: 'leader',
      at: last.hole,
      field: 'bolt',
      text: holeCallOut(r.size, r.tabs.length, format),
    },
    last.bend === undefined
      ? undefined
      : {
          id: 'bend',
          kind: 'leader',
          at: onTab(last, half * 0.6, last.bend),
          field: 'tabLength',
          text: `${r.tabs.length > 1 ? `${r.tabs.length} × ` : ''}bend down 90° R${format.bare(p.bendRadius.mm)}, leg ${format.bare(p.tabLength.mm)}`,
        },
  ];
}

function windowDimensions(
  p: ChainGuard,
  r: ResolvedGuard,
  { format }: DrawContext,
): readonly (DimensionSpec | undefined)[] {
  if (p.window === 'none') return [];
  const middle = windowMiddle(p, r.drive);
  const first = middle.x - ((p.openings - 1) / 2) * p.pitch.mm;
  const size =
    p.window === 'round'
      ? `⌀${format.bare(p.opening.mm)}`
      : `${format.bare(p.opening.mm)} × ${format.bare(p.slotLength.mm)}`;
  return [
    {
      id: 'window',
      kind: 'leader',
      at: { x: first, y: middle.y },
      field: 'opening',
      text: `${p.openings > 1 ? `${p.openings} × ` : ''}${size}${p.openings > 1 ? `, ${format.bare(p.pitch.mm)} apart` : ''}`,
    },
    p.windowUp === undefined || p.windowUp.mm === 0
      ? undefined
      : {
          id: 'windowUp',
          kind: 'linear',
          along: 'y',
          from: { x: middle.x, y: 0 },
          to: middle,
          field: 'windowUp',
          text: format.bare(Math.abs(p.windowUp.mm)),
        },
  ];
}

export function chainGuardDimensions(part: Part, p: ChainGuard, context: DrawContext): readonly Dimension[] {
  const answer = resolveGuard(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { bare } = context.format;
  const { minX, maxX, minY, maxY } = boundsOf(outlineOf(part).contour);
  const reach = (pitch: number): number => pitch / 2 + r.drive.height / 2 + p.room.mm;
  return inOrder([
    {
      id: 'centres',
      kind: 'linear',
      along: 'x',
      from: { x: 0, y: 0 },
      to: { x: p.centres.mm, y: 0 },
      field: 'centres',
      text: bare(p.centres.mm),
    },
    {
      id: 'small',
      kind: 'radius',
      centre: { x: -p.takeUp.mm / 2, y: 0 },
      radius: reach(r.drive.pitchSmall),
      degrees: 150,
      field: 'small',
      text: `R${bare(reach(r.drive.pitchSmall))}`,
    },
    {
      id: 'large',
      kind: 'radius',
      centre: { x: p.centres.mm, y: 0 },
      radius: reach(r.drive.pitchLarge),
      degrees: 30,
      field: 'large',
      text: `R${bare(reach(r.drive.pitchLarge))}`,
    },
    p.axleLarge.mm === 0
      ? undefined
      : {
          id: 'axleLarge',
          kind: 'diameter',
          centre: { x: p.centres.mm, y: 0 },
          radius: (p.axleLarge.mm + p.axleRoom.mm) / 2,
          field: 'axleLarge',
          text: `⌀${bare(p.axleLarge.mm + p.axleRoom.mm)}`,
        },
    p.axleSmall.mm === 0
      ? undefined
      : {
          id: 'axleSmall',
          kind: 'leader',
          at: { x: p.takeUp.mm / 2, y: (p.axleSmall.mm + p.axleRoom.mm) / 2 },
          field: 'axleSmall',
          text:
            p.takeUp.mm === 0
              ? `⌀${bare(p.axleSmall.mm + p.axleRoom.mm)}`
              : `slot ${bare(p.axleSmall.mm + p.axleRoom.mm)} wide, ends ${bare(p.takeUp.mm)} apart`,
        },
    ...tabDimensions(p, r, context),
    ...windowDimensions(p, r, context),
    {
      id: 'over.x',
      kind: 'linear',
      along: 'x',
      from: { x: minX, y: minY },
      to: { x: maxX, y: minY },
      text: bare(maxX - minX),
    },
    {
      id: 'over.y',
      kind: 'linear',
      along: 'y',
      from: { x: maxX, y: minY },
      to: { x: maxX, y: maxY },
      text: bare(maxY - minY),
    },
    thicknessLeader(part, context.format, 0.3),
  ]);
}
