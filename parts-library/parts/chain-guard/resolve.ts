// A chain guard worked out once: drive, belt, tabs, windows.
import type { Feature, LineFeature } from '../../model/index.js';
import { refuseStray } from '../shared/finish-part.js';
import { holeFeature, sizeHole, type SizedHole } from '../shared/holes.js';
import { refusal, rememberResolved, type Resolved } from '../shared/resolved.js';
import { driveOf, type Drive } from './drive.js';
import { guardOutline } from './outline.js';
import type { ChainGuard } from './parameters.js';
import { tabsOf, type Tab } from './tabs.js';
import { axleFeatures, windowFeatures } from './window.js';

export interface ResolvedGuard {
  readonly drive: Drive;
  readonly tabs: readonly Tab[];
  readonly size: SizedHole;
  readonly features: readonly Feature[];
}

function bendLine(p: ChainGuard, tab: Tab): readonly LineFeature[] {
  if (tab.bend === undefined) return [];
  const half = p.tabWidth.mm / 2;
  const at = (u: number) => ({
    x: tab.root.x + u * tab.along.x + (tab.bend ?? 0) * tab.away.x,
    y: tab.root.y + u * tab.along.y + (tab.bend ?? 0) * tab.away.y,
    bulge: 0,
  });
  return [
    {
      id: `${tab.id}.bend`,
      name: `bend line of a tab`,
      purpose: 'score',
      path: { vertices: [at(-half), at(half)] },
      bend: { degrees: 90, radius: p.bendRadius.mm, direction: 'down' },
    },
  ];
}

const fieldOf = ({ id }: Feature): string => {
  if (id.startsWith('window')) return 'windowAt';
  return id === 'axle.small' ? 'axleSmall' : id === 'axle.large' ? 'axleLarge' : 'tabHole';
};

function resolveFresh(p: ChainGuard): Resolved<ResolvedGuard> {
  const size = sizeHole(p);
  if (typeof size === 'string') return refusal('holes', size);
  const drive = driveOf(p);
  if (!drive.ok) return drive;
  const tabs = tabsOf(p, drive.value);
  if (!tabs.ok) return tabs;
  const windows = windowFeatures(p, drive.value);
  if (!windows.ok) return windows;
  const outline = guardOutline(p, drive.value, tabs.value);
  const inner: readonly Feature[] = [
    ...axleFeatures(p),
    ...windows.value,
    ...tabs.value.map(({ id, hole }, index) =>
      holeFeature(`${id}.hole`, `tab hole ${index + 1}`, hole, size),
    ),
  ];
  const stray = refuseStray(outline.contour, inner, fieldOf);
  return (
    stray ?? {
      ok: true,
      value: {
        drive: drive.value,
        tabs: tabs.value,
        size,
        features: [outline, ...inner, ...tabs.value.flatMap((tab) => bendLine(p, tab))],
      },
    }
  );
}

/** Works a guard out; the same parameters object once. */
export const resolveGuard = rememberResolved(resolveFresh, 'root');
