// Derived values, ghosts, steps and hardware of a chain guard.
import type { Facts } from '../../checks/index.js';
import { boundsOf, hullContour } from '../../geometry/index.js';
import { chainLength, outsideDiameter, reachDistance } from '../../handbook/index.js';
import {
  outlineOf,
  type Derived,
  type Ghost,
  type HardwareItem,
  type Part,
  type ShopStep,
} from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { boltItems, headGhosts } from '../shared/bolted.js';
import { holeSteps } from '../shared/holes.js';
import { lineGhost } from '../shared/mating.js';
import { roundText } from '../shared/words.js';
import { discsRound } from './drive.js';
import type { ChainGuard } from './parameters.js';
import { resolveGuard } from './resolve.js';
import { tabFlat, type Tab } from './tabs.js';

export function chainGuardDerived(part: Part, p: ChainGuard, { format }: DrawContext): readonly Derived[] {
  const answer = resolveGuard(p);
  if (!answer.ok) return [];
  const { drive, tabs } = answer.value;
  const links = chainLength(
    Math.min(p.small, p.large),
    Math.max(p.small, p.large),
    p.centres.mm / drive.chain.pitch,
  );
  const { minX, maxX, minY, maxY } = boundsOf(outlineOf(part).contour);
  const distance =
    p.window === 'none' ? undefined : reachDistance(p.window === 'round' ? 'round' : 'slot', p.opening.mm);
  const flat = tabFlat(p);
  return [
    {
      id: 'size',
      field: 'room',
      title: 'over all',
      value: { amount: maxX - minX, unit: 'mm' },
      text: `${format.length(maxX - minX)} × ${format.length(maxY - minY)}`,
    },
    ...(links === undefined
      ? []
      : [
          {
            id: 'links',
            field: 'centres',
            title: 'chain behind it',
            value: { amount: links, unit: '1' as const },
            text: `${roundText(links)} links of ${drive.chain.name} at that centre distance`,
          },
        ]),
    ...(distance === undefined
      ? []
      : [
          {
            id: 'reach',
            field: 'opening',
            title: 'finger reach',
            value: { amount: distance, unit: 'mm' as const },
            text: `openings of ${format.length(p.opening.mm)} want the chain ${format.length(distance)} behind them; it is ${format.length(p.behind.mm)}`,
          },
        ]),
    ...(flat.bend === undefined || tabs.length === 0
      ? []
      : [
          {
            id: 'tab',
            field: 'tabLength',
            title: 'tab in the flat',
            value: { amount: flat.length, unit: 'mm' as const },
            text: `${format.length(flat.length)} for a leg of ${format.length(p.tabLength.mm)}; bend line ${format.length((flat.bend.begins + flat.bend.ends) / 2)} from the edge`,
          },
        ]),
  ];
}

/** Where the bend of each tab begins and ends. */
function bentZones(p: ChainGuard, tabs: readonly Tab[]): readonly Ghost[] {
  const { bend } = tabFlat(p);
  if (bend === undefined) return [];
  const half = p.tabWidth.mm / 2;
  return tabs.flatMap((tab) =>
    (['begins', 'ends'] as const).map((which) => {
      const at = (u: number) => ({
        x: tab.root.x + u * tab.along.x + bend[which] * tab.away.x,
        y: tab.root.y + u * tab.along.y + bend[which] * tab.away.y,
      });
      return lineGhost(`${tab.id}.${which}`, 'folded', at(-half), at(half));
    }),
  );
}

/** Sprockets, chain in the middle of its take-up, what it sweeps, shafts, heads. */
export function chainGuardGhosts(_part: Part, p: ChainGuard, _facts: Facts): readonly Ghost[] {
  const answer = resolveGuard(p);
  if (!answer.ok) return [];
  const { drive, tabs, size } = answer.value;
  const round = (id: string, kind: Ghost['kind'], x: number, diameter: number, label?: string): Ghost => ({
    id,
    kind,
    ...(label === undefined ? {} : { label }),
    shape: { circle: { centre: { x, y: 0 }, radius: diameter / 2 } },
  });
  const pitches = [drive.pitchSmall, drive.pitchLarge] as const;
  const still = { ...p, takeUp: { ...p.takeUp, mm: 0 } };
  const far = p.centres.mm;
  const { pitch } = drive.chain;
  return [
    round('sprocket.small', 'mating-part', 0, outsideDiameter(pitch, p.small), `${p.small} teeth`),
    round('sprocket.large', 'mating-part', far, outsideDiameter(pitch, p.large), `${p.large} teeth`),
    {
      id: 'chain',
      kind: 'chain',
      label: `chain ${drive.chain.name}`,
      shape: { contour: hullContour(discsRound(still, pitches, 0), 'outline') },
    },
    {
      id: 'chain.swept',
      kind: 'chain',
      shape: { contour: hullContour(discsRound(still, pitches, drive.height / 2), 'outline') },
    },
    ...(p.axleSmall.mm === 0 ? [] : [round('axle.small', 'hub', 0, p.axleSmall.mm)]),
    ...(p.axleLarge.mm === 0 ? [] : [round('axle.large', 'hub', far, p.axleLarge.mm, 'shaft')]),
    ...bentZones(p, tabs),
    ...headGhosts(
      size,
      tabs.map(({ id, hole }) => ({ featureId: `${id}.hole`, at: hole })),
    ),
  ];
}

export function chainGuardSteps(_part: Part, p: ChainGuard, facts: Facts): readonly ShopStep[] {
  const answer = resolveGuard(p);
  if (!answer.ok) return [];
  const { tabs, size } = answer.value;
  const { length } = facts.format;
  const holes = tabs.map(({ id }) => `${id}.hole`);
  return [
    {
      kind: 'deburr',
      says: 'Scrape dross, round every edge: a guard is handled, and its edge is what a hand meets.',
    },
    {
      kind: 'measure',
      says: 'Measure one window opening and the shaft’s opening; thin sheet warps, lay it flat first.',
    },
    ...holeSteps(size, holes, facts.format),
    ...(p.tabsAre === 'flat'
      ? []
      : tabs.map((tab): ShopStep => ({
          kind: 'bend',
          says: `Bend the tab ${tab.edge} down 90° on its line, inside radius ${length(p.bendRadius.mm)}, to a leg of ${length(p.tabLength.mm)} outside.`,
          featureIds: [`${tab.id}.bend`],
        }))),
    {
      kind: 'fit',
      says: `Hang it with the drive locked, turn the chain once round by hand at both ends of the take-up: ${length(p.behind.mm)} to the chain all the way.`,
    },
    { kind: 'paint', says: 'Paint it in a colour that is missed when it is off.' },
    {
      kind: 'caution',
      says: 'The drive does not run without its guard, not even to try it. Power off and locked before it comes off.',
    },
  ];
}

export function chainGuardHardware(_part: Part, p: ChainGuard, facts: Facts): readonly HardwareItem[] {
  const answer = resolveGuard(p);
  if (!answer.ok) return [];
  const { tabs, size } = answer.value;
  const tapped = size.made === 'tapped';
  const spacer = p.tabsAre === 'flat' ? p.standoff.mm : 0;
  return [
    ...boltItems(
      {
        id: 'tabs',
        bolt: p.bolt,
        count: tabs.length,
        grip: spacer + p.under.mm + (tapped ? 0 : p.thickness.mm),
        ...(tapped ? { into: p.thickness.mm } : {}),
      },
      facts.format,
    ),
    ...(spacer > 0 && tabs.length > 0
      ? [
          {
            id: 'spacers',
            kind: 'tube' as const,
            name: `spacer tube for ${p.bolt}`,
            quantity: tabs.length,
            length: spacer,
            says: 'Ends square; all of one length.',
          },
        ]
      : []),
  ];
}
