// The middle of a plate: how the opening for hub or shaft is made and what size it is cut and finished to.
import { circleContour, makeContour, type Contour } from '../../geometry/index.js';
import { findKey } from '../../handbook/index.js';
import type { CutFeature, HoleFinish } from '../../model/index.js';
import type { Entry } from '../fields/index.js';
import { keyedBore } from './keyed-bore.js';

export type CentreWay = 'slip-to-weld' | 'bore-after' | 'turned' | 'plain' | 'none';

/** The middle as asked for; lengths as typed. */
export interface WantedCentre {
  readonly centre?: CentreWay | undefined;
  readonly hub?: Entry | undefined;
  readonly fit?: Entry | undefined;
  readonly bore?: Entry | undefined;
  readonly grind: Entry;
  readonly machiningAllowance: Entry;
  readonly keyway: 'none' | 'metric' | 'inch';
}

export interface Centre {
  readonly way: CentreWay;
  /** Diameter when everything is done, mm. */
  readonly finished: number;
  /** Diameter that leaves the table before kerf, mm. */
  readonly drawn: number;
  readonly finish: HoleFinish;
  /** Hub that goes in, mm, and the ± of its reading. */
  readonly hub?: { readonly diameter: number; readonly plusMinus: number | undefined };
  readonly welded: boolean;
}

export type CentreResult =
  | { readonly ok: true; readonly value: Centre | undefined }
  | { readonly ok: false; readonly field: string; readonly says: string };

/** Clearance on diameter when none is given, mm: a hub slips in to be welded; a bored one is fitted as measured. */
const SLIP_FIT = 0.2;

const wayOf = (p: WantedCentre): CentreWay =>
  p.centre ?? (p.hub === undefined ? (p.bore === undefined ? 'none' : 'plain') : 'slip-to-weld');

/** Resolves the centre from hub and fit, or from the bore; says which field is missing. */
export function resolveCentre(p: WantedCentre): CentreResult {
  const way = wayOf(p);
  if (way === 'none') return { ok: true, value: undefined };
  const fit = p.fit?.mm ?? (way === 'slip-to-weld' || way === 'plain' ? SLIP_FIT : 0);
  const finished = p.bore?.mm ?? (p.hub === undefined ? undefined : p.hub.mm + fit);
  if (finished === undefined) {
    return {
      ok: false,
      field: way === 'plain' ? 'bore' : 'hub',
      says: `A centre made as "${way}" needs the hub's outside diameter (and fit), or the bore itself.`,
    };
  }
  const machined = way === 'bore-after' || way === 'turned';
  const drawn = machined
    ? finished - p.machiningAllowance.mm
    : way === 'slip-to-weld'
      ? finished - 2 * p.grind.mm
      : finished;
  if (drawn <= 0) {
    return {
      ok: false,
      field: machined ? 'machiningAllowance' : 'grind',
      says: `Nothing is left to cut of a bore of ${finished.toFixed(2)} mm; a smaller allowance would do.`,
    };
  }
  return {
    ok: true,
    value: {
      way,
      finished,
      drawn,
      finish: machined ? 'bore' : 'cut',
      welded: way !== 'plain' && p.hub !== undefined,
      ...(p.hub === undefined ? {} : { hub: { diameter: p.hub.mm, plusMinus: p.hub.plusMinus } }),
    },
  };
}

/** The centre opening as a feature. `field` names what is wrong when a keyway does not fit. */
export function drawCentre(
  p: WantedCentre,
  centre: Centre,
):
  | { readonly ok: true; readonly value: CutFeature }
  | { readonly ok: false; readonly field: string; readonly says: string } {
  const feature = (contour: Contour, name: string): CutFeature => ({
    id: 'centre',
    name,
    purpose: 'opening',
    contour,
    ...(centre.welded ? { edges: contour.map((_, segment) => ({ segment, role: 'weld' as const })) } : {}),
    hole: { finish: centre.finish, size: centre.finished, takes: centre.hub?.diameter ?? centre.finished },
  });
  if (p.keyway === 'none' || centre.way !== 'plain') {
    return {
      ok: true,
      value: feature(circleContour({ x: 0, y: 0 }, centre.drawn / 2, 'opening'), 'centre opening'),
    };
  }
  const key = findKey(centre.finished, p.keyway);
  if (!key.found) return { ok: false, field: 'keyway', says: key.says };
  const vertices = keyedBore(centre.finished, key.row.width, centre.finished + key.row.hubDepth);
  if (vertices.length === 0) {
    return {
      ok: false,
      field: 'keyway',
      says: `The keyway of ${key.row.width} mm leaves no bore of ${centre.finished} mm.`,
    };
  }
  return { ok: true, value: feature(makeContour(vertices, { direction: 'opening' }), 'keyed bore') };
}
