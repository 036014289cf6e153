// Draws the flat pattern of a bent bracket: a strip along x, its bend lines, reliefs and holes.
import { circleContour, polygonContour, type Point } from '../../geometry/index.js';
import type { Feature, Part, Staged } from '../../model/index.js';
import { refuseToDraw } from '../shared/refuse.js';
import { bentBracketAbout } from './about.js';
import { holeDiameterOf, holesOf } from './holes.js';
import { flatPatternOf, type FlatPattern } from './profile.js';
import type { BentBracket } from './parameters.js';

/** Relief beside a narrower leg: as wide as the plate is thick, as deep as thickness and radius; published rules page. */
export function reliefOf(
  flat: FlatPattern,
  p: BentBracket,
): { readonly width: number; readonly depth: number } | undefined {
  if (p.lastWidth === undefined || p.lastWidth.mm >= p.width.mm) return undefined;
  return { width: p.thickness.mm, depth: p.thickness.mm + flat.radius };
}

/** The strip's edge, counter-clockwise from the lower left. */
function outlinePoints(p: BentBracket, flat: FlatPattern): readonly Point[] {
  const half = p.width.mm / 2;
  const relief = reliefOf(flat, p);
  const step = (flat.bends.at(-1)?.at ?? 0) - flat.allowance / 2;
  if (relief === undefined) {
    return [
      { x: 0, y: -half },
      { x: flat.length, y: -half },
      { x: flat.length, y: half },
      { x: 0, y: half },
    ];
  }
  const narrow = (p.lastWidth?.mm ?? p.width.mm) / 2;
  const notch = Math.min(narrow + relief.width, half);
  // A step no wider than the relief has no corner of its own.
  const side = (sign: 1 | -1): readonly Point[] => [
    ...(notch < half
      ? [
          { x: step, y: sign * half },
          { x: step, y: sign * notch },
        ]
      : []),
    { x: step - relief.depth, y: sign * notch },
    { x: step - relief.depth, y: sign * narrow },
  ];
  return [
    { x: 0, y: -half },
    ...side(-1),
    { x: flat.length, y: -narrow },
    { x: flat.length, y: narrow },
    ...[...side(1)].reverse(),
    { x: 0, y: half },
  ];
}

/** Parameters to the flat part; origin at the first leg's end, on the strip's middle line. */
export function drawBentBracket(p: BentBracket): Staged<Part | undefined> {
  if (p.made === 'scored' && p.groove.mm >= p.thickness.mm) {
    return refuseToDraw(
      'bracket',
      'groove',
      `A groove of ${p.groove.mm} mm goes through ${p.thickness.mm} mm plate; half the thickness is the most.`,
    );
  }
  const flat = flatPatternOf(p);
  const eaten = flat.legs.find(({ straight }) => straight <= 0);
  if (eaten !== undefined) {
    return refuseToDraw(
      'bracket',
      eaten.field,
      `The bends take up ${(eaten.outside - eaten.straight).toFixed(2)} mm of the ${eaten.name}; a longer one or a smaller radius would do.`,
    );
  }
  const radius = holeDiameterOf(p) / 2;
  const holes = holesOf(p, flat);
  const stray = holes.find(({ at, leg }) => {
    const isLast = leg === flat.legs.at(-1);
    const half = (isLast ? (p.lastWidth?.mm ?? p.width.mm) : p.width.mm) / 2;
    return at.x - radius <= 0 || at.x + radius >= flat.length || Math.abs(at.y) + radius >= half;
  });
  if (stray !== undefined) {
    return refuseToDraw(
      'bracket',
      stray.field,
      `${stray.name} (⌀${(2 * radius).toFixed(2)} mm) runs out of the strip; a place further in, fewer holes, or a wider strip would do.`,
    );
  }
  const widthAt = (index: number): number =>
    index === flat.bends.length - 1 ? (p.lastWidth?.mm ?? p.width.mm) : p.width.mm;
  const features: readonly Feature[] = [
    {
      id: 'outline',
      name: 'outline',
      purpose: 'outline',
      contour: polygonContour(outlinePoints(p, flat), { direction: 'outline' }),
    },
    ...holes.map(({ id, name, at }): Feature => ({
      id,
      name,
      purpose: 'opening',
      contour: circleContour(at, radius, 'opening'),
      hole: { finish: 'cut', size: 2 * radius, thread: p.bolt },
    })),
    ...flat.bends.map(({ id, at, direction }, index): Feature => {
      const half = Math.min(widthAt(index), p.width.mm) / 2;
      return {
        id,
        name: `bend line ${index + 1}`,
        purpose: 'score',
        path: {
          vertices: [
            { x: at, y: -half, bulge: 0 },
            { x: at, y: half, bulge: 0 },
          ],
        },
        bend: { degrees: p.bend.value, radius: flat.radius, direction },
      };
    }),
  ];
  return {
    value: {
      family: bentBracketAbout.id,
      name: 'Bent bracket',
      features,
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
    },
    findings: [],
  };
}
