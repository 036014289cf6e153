// A mounting plate worked out once: hole sets, openings and outside.
import {
  hullContour,
  rectangleContour,
  slotContour,
  circleContour,
  type Disc,
  type Point,
} from '../../geometry/index.js';
import type { CutFeature, Feature } from '../../model/index.js';
import { refuseStray } from '../shared/finish-part.js';
import { refusal, rememberResolved, type Resolved } from '../shared/resolved.js';
import { endsOf, slottedFeature } from '../shared/slotted.js';
import { roundText } from '../shared/words.js';
import { baseHoles, motorHoles, motorMiddle, motorStretch, type HoleSet } from './holes.js';
import { rectangleOutside, type Outside } from './notch.js';
import type { MountingPlate } from './parameters.js';

export interface ResolvedPlate {
  readonly base: HoleSet | undefined;
  readonly motor: HoleSet | undefined;
  readonly outside: Outside;
  /** Outline, openings and marks. */
  readonly features: readonly Feature[];
  /** Edge distance of a hull, mm. */
  readonly edge: number;
}

/** Edge distance when none is given, in bolt diameters, and metal beside a hole in thicknesses. */
const USUAL_EDGE = 2;
const USUAL_WEB = 1.5;

const edgeOf = (p: MountingPlate, sets: readonly HoleSet[]): number =>
  p.edge?.mm ??
  Math.max(
    USUAL_WEB * p.thickness.mm,
    ...sets.map(({ size }) =>
      Math.max(USUAL_EDGE * size.thread.diameter, USUAL_WEB * p.thickness.mm + size.diameter / 2),
    ),
  );

/** Diameter of the opening for the pilot; 0 for none. */
export const pilotOpening = (p: MountingPlate): number =>
  p.face === 'none' || p.pilot.mm === 0 ? 0 : p.pilot.mm + p.pilotPlay.mm;

function pilotFeature(p: MountingPlate): readonly CutFeature[] {
  const diameter = pilotOpening(p);
  if (diameter === 0) return [];
  const stretch = motorStretch(p);
  const middle = motorMiddle(p);
  const [from, to] = endsOf(middle, stretch);
  const base = { id: 'motor.pilot', name: 'pilot opening', purpose: 'opening' } as const;
  return stretch.kind === 'straight'
    ? [{ ...base, contour: slotContour(from, to, diameter, 'opening') }]
    : [
        {
          ...base,
          contour: circleContour(middle, diameter / 2, 'opening'),
          hole: { finish: 'cut', size: diameter },
        },
      ];
}

function windowFeature(p: MountingPlate): Resolved<readonly CutFeature[]> {
  const { window } = p;
  if (window === undefined) return { ok: true, value: [] };
  const most = Math.min(window.width.mm, window.height.mm) / 2;
  if (window.corner.mm > most) {
    return refusal(
      'window.corner',
      `Corners of ${roundText(window.corner.mm)} mm do not fit in a window ${roundText(window.width.mm)} × ${roundText(window.height.mm)} mm; ${roundText(most)} mm is the most.`,
    );
  }
  const contour = rectangleContour(
    {
      centre: { x: window.x.mm, y: window.y.mm },
      width: window.width.mm,
      height: window.height.mm,
      corner: window.corner.mm,
    },
    'opening',
  );
  return { ok: true, value: [{ id: 'window', name: 'window', purpose: 'opening', contour }] };
}

const setFeatures = (set: HoleSet | undefined, name: string): readonly Feature[] =>
  set === undefined
    ? []
    : set.holes.map((hole, index) => slottedFeature(hole, `${name} ${index + 1}`, set.size, set.stretch));

/** Belt round the ends of all slots, the pilot and the window. */
function hullOutside(p: MountingPlate, sets: readonly HoleSet[], edge: number): Resolved<Outside> {
  if (p.notch !== undefined) {
    return refusal('notch.side', 'A hull has no straight edge of its own to notch; a rectangle would do.');
  }
  const web = USUAL_WEB * p.thickness.mm;
  const holes = sets.flatMap(({ holes: placed, stretch }): readonly Disc[] =>
    cornersOf(placed.map(({ at }) => at)).flatMap((at) =>
      endsOf(at, stretch).map((centre) => ({ centre, radius: edge })),
    ),
  );
  const pilot = pilotOpening(p) / 2;
  const pilots =
    pilot === 0
      ? []
      : endsOf(motorMiddle(p), motorStretch(p)).map((centre) => ({ centre, radius: pilot + web }));
  const { window } = p;
  const windows =
    window === undefined
      ? []
      : [-1, 1].flatMap((x) =>
          [-1, 1].map((y) => ({
            centre: {
              x: window.x.mm + (x * window.width.mm) / 2,
              y: window.y.mm + (y * window.height.mm) / 2,
            },
            radius: web,
          })),
        );
  const discs = [...holes, ...pilots, ...windows];
  return discs.length === 0
    ? refusal('figure', 'A hull needs holes, a motor face or a window to go round; a rectangle needs none.')
    : { ok: true, value: { contour: hullContour(discs, 'outline') } };
}

/** Of a grid's many holes only those in its corners touch the belt; of a circle's all do. */
function cornersOf(points: readonly Point[]): readonly Point[] {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const corners = points.filter(
    ({ x, y }) =>
      (Math.abs(x - left) < 1e-6 || Math.abs(x - right) < 1e-6) &&
      (Math.abs(y - low) < 1e-6 || Math.abs(y - high) < 1e-6),
  );
  // A figure without its box's corners is no grid.
  return corners.length === 4 && points.length > 16 ? corners : points;
}

const FIELDS: readonly (readonly [prefix: string, field: string])[] = [
  ['motor.pilot', 'motorX'],
  ['motor.hole', 'motorX'],
  ['window', 'window.x'],
];

/** The parameter that moves a feature further in. */
export function fieldOfFeature(p: MountingPlate, id: string): string {
  const known = FIELDS.find(([prefix]) => id.startsWith(prefix))?.[1];
  return known ?? (p.figure === 'circle' ? 'boltCircle' : p.columns > 1 ? 'pitchX' : 'pitchY');
}

function resolveFresh(p: MountingPlate): Resolved<ResolvedPlate> {
  const base = baseHoles(p);
  if (!base.ok) return base;
  const motor = motorHoles(p);
  if (!motor.ok) return motor;
  const window = windowFeature(p);
  if (!window.ok) return window;
  const sets = [base.value, motor.value].filter((set) => set !== undefined);
  const edge = edgeOf(p, sets);
  const outside = p.shape === 'hull' ? hullOutside(p, sets, edge) : rectangleOutside(p);
  if (!outside.ok) return outside;
  const outline: CutFeature = {
    id: 'outline',
    name: 'outline',
    purpose: 'outline',
    contour: outside.value.contour,
  };
  const inner = [
    ...pilotFeature(p),
    ...setFeatures(motor.value, 'motor hole'),
    ...setFeatures(base.value, 'hole'),
    ...window.value,
  ];
  // A hull holds everything that it goes round.
  const stray =
    p.shape === 'hull' ? undefined : refuseStray(outline.contour, inner, ({ id }) => fieldOfFeature(p, id));
  if (stray !== undefined) return stray;
  return {
    ok: true,
    value: {
      base: base.value,
      motor: motor.value,
      outside: outside.value,
      features: [outline, ...inner],
      edge,
    },
  };
}

/** Works a plate out; the same parameters object once. */
export const resolvePlate = rememberResolved(resolveFresh, 'shape');
