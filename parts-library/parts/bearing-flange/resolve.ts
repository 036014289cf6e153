// A bearing flange plate worked out once: bearing holes, opening or seat, mounting holes, outside.
import { circleContour, type Point } from '../../geometry/index.js';
import { bearingSeat, type BearingSeat, type BoltCircle } from '../../handbook/index.js';
import type { CutFeature, Feature } from '../../model/index.js';
import { refuseStray } from '../shared/finish-part.js';
import { refusal, rememberResolved, type Resolved } from '../shared/resolved.js';
import {
  clampHoles,
  clampRingRadius,
  flangeHoles,
  holesOf,
  mountHoles,
  shaftOf,
  USUAL_WEB,
  type Holes,
} from './holes.js';
import { edgeOf, footOf, outsideOf } from './outside.js';
import type { BearingFlange } from './parameters.js';

export interface ResolvedFlange {
  readonly shaft: Point;
  /** The housing's bolts, with the circle as measured. */
  readonly flange?: Holes & { readonly circle: BoltCircle };
  /** The bare bearing's seat. */
  readonly seat?: BearingSeat;
  readonly clamp?: Holes & { readonly circle: number };
  readonly mount?: Holes;
  /** Diameter of the opening as cut and when finished, mm. */
  readonly cut: number;
  readonly finished: number;
  readonly edge: number;
  readonly features: readonly Feature[];
  /** Length of the edge that is welded, mm; 0 when it is bolted. */
  readonly foot: number;
}

function openingOf(p: BearingFlange): Resolved<{
  readonly feature: CutFeature;
  readonly seat: BearingSeat | undefined;
  readonly cut: number;
  readonly finished: number;
}> {
  const centre = shaftOf(p);
  if (p.bearing === 'flanged') {
    const cut = p.collar.mm + p.collarRoom.mm;
    const feature: CutFeature = {
      id: 'opening',
      name: 'shaft opening',
      purpose: 'opening',
      contour: circleContour(centre, cut / 2, 'opening'),
      hole: { finish: 'cut', size: cut },
    };
    return { ok: true, value: { feature, seat: undefined, cut, finished: cut } };
  }
  const seat = bearingSeat(p.outside.mm, p.seatFit);
  if (!seat.found) return refusal('outside', seat.says);
  const cut = p.outside.mm - p.leave.mm;
  const feature: CutFeature = {
    id: 'opening',
    name: 'bearing seat',
    purpose: 'opening',
    contour: circleContour(centre, cut / 2, 'opening'),
    hole: { finish: 'bore', size: seat.row.most, takes: p.outside.mm },
  };
  return { ok: true, value: { feature, seat: seat.row, cut, finished: seat.row.most } };
}

const FIELDS: Readonly<Record<string, string>> = {
  flange: 'boltCircle',
  clamp: 'outside',
  mount: 'mountX',
};

/** The parameter that moves a feature further in. */
export function fieldOfFeature(p: BearingFlange, id: string): string {
  const own = FIELDS[id.split('.')[0] ?? ''];
  return own ?? (p.bearing === 'seat' ? 'outside' : 'collar');
}

function resolveFresh(p: BearingFlange): Resolved<ResolvedFlange> {
  const opening = openingOf(p);
  if (!opening.ok) return opening;
  const { feature, seat, cut, finished } = opening.value;
  const [flange, clamp, mount] = [flangeHoles(p), clampHoles(p, finished), mountHoles(p)];
  if (!flange.ok) return flange;
  if (!clamp.ok) return clamp;
  if (!mount.ok) return mount;
  const sets = [flange.value, clamp.value, mount.value].filter((set) => set !== undefined);
  const edge = edgeOf(p, sets);
  const ring = clamp.value === undefined ? 0 : clampRingRadius(clamp.value);
  const middle = Math.max(finished / 2 + USUAL_WEB * p.thickness.mm, ring);
  const outside = outsideOf(p, sets, middle, edge);
  if (!outside.ok) return outside;
  const foot = p.mount === 'welded' ? footOf(outside.value, -p.height.mm / 2) : { edges: [], length: 0 };
  if (p.mount === 'welded' && foot.length <= 0) {
    return refusal(
      'height',
      'The bearing hangs lower than the foot, so that nothing straight is left to weld; a greater height or a shaft further up would do.',
    );
  }
  const outline: CutFeature = {
    id: 'outline',
    name: 'outline',
    purpose: 'outline',
    contour: outside.value,
    ...(foot.edges.length === 0 ? {} : { edges: foot.edges }),
  };
  const inner = [
    feature,
    ...holesOf(flange.value, 'housing bolt hole'),
    ...holesOf(clamp.value, 'clamp ring hole'),
    ...holesOf(mount.value, 'mounting hole'),
  ];
  const stray = refuseStray(outside.value, inner, ({ id }) =>
    p.shape === 'hull' ? 'edge' : fieldOfFeature(p, id),
  );
  if (stray !== undefined) return stray;
  return {
    ok: true,
    value: {
      shaft: shaftOf(p),
      ...(flange.value === undefined ? {} : { flange: flange.value }),
      ...(clamp.value === undefined ? {} : { clamp: clamp.value }),
      ...(mount.value === undefined ? {} : { mount: mount.value }),
      ...(seat === undefined ? {} : { seat }),
      cut,
      finished,
      edge,
      features: [outline, ...inner],
      foot: foot.length,
    },
  };
}

/** Works a plate out; the same parameters object once. */
export const resolveFlange = rememberResolved(resolveFresh, 'shape');
