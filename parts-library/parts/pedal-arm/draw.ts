// Draws the arm in the flat: origin at the pivot, x toward the pad, the foot pressing from above.
import {
  circleContour,
  nearestOnContour,
  pointAlong,
  segmentsOf,
  type Contour,
  type Point,
} from '../../geometry/index.js';
import type { CutFeature, EdgeUse, Feature, Finding, Part, Staged } from '../../model/index.js';
import { etchLabel, noRoomForLabel } from '../shared/label.js';
import { refuseToDraw } from '../shared/refuse.js';
import { pedalArmAbout } from './about.js';
import { layoutOf, type BendLine, type Layout } from './layout.js';
import { outlineOf } from './outline.js';
import { dimplesOf } from './pad.js';
import type { PedalArm } from './parameters.js';
import { placeOn } from './path.js';

export const NAMES = {
  brake: 'Brake pedal arm',
  throttle: 'Throttle pedal arm',
  clutch: 'Clutch pedal arm',
} as const;

/** What a bored hole for a bush is cut under size, mm. */
export const LEFT_TO_BORE = 3;
/** A reamed hole is drilled so much smaller, mm; common practice for small holes. */
export const LEFT_TO_REAM = 0.2;
/** Rounding of a place on an edge, mm. */
const EDGE = 1e-6;
/** A drilled or cut pin hole is so much larger than its pin, mm. */
export const PIN_PLAY = 0.2;

/** Finished diameter of a pin hole. */
export const pinHoleOf = (p: PedalArm): number => p.linkPin.mm + (p.linkMade === 'ream' ? 0 : PIN_PLAY);

function pivotFeature(p: PedalArm, { bore }: Layout): CutFeature {
  const isWelded = p.pivot === 'welded';
  const contour = circleContour({ x: 0, y: 0 }, (isWelded ? bore : bore - LEFT_TO_BORE) / 2, 'opening');
  return {
    id: 'pivot',
    name: 'pivot hole',
    purpose: 'opening',
    contour,
    ...(isWelded ? { edges: contour.map((_, segment) => ({ segment, role: 'weld' as const })) } : {}),
    hole: { finish: isWelded ? 'cut' : 'bore', size: bore, takes: p.tubeOutside.mm },
  };
}

const pinFeature = (p: PedalArm, at: Point, index: number): Feature => {
  const base = { id: `pin.${index + 1}`, name: `pin hole ${index + 1}` };
  const hole = { size: pinHoleOf(p), takes: p.linkPin.mm } as const;
  return p.linkMade === 'cut'
    ? {
        ...base,
        purpose: 'opening',
        contour: circleContour(at, hole.size / 2, 'opening'),
        hole: { ...hole, finish: 'cut' },
      }
    : { ...base, purpose: 'mark', at, hole: { ...hole, finish: p.linkMade } };
};

const scoreFeature = (p: PedalArm, { id, name, at, along, half, degrees, direction }: BendLine): Feature => ({
  id,
  name,
  purpose: 'score',
  path: {
    vertices: [-half, half].map((distance) => ({
      x: at.x + along.x * distance,
      y: at.y + along.y * distance,
      bulge: 0,
    })),
  },
  bend: { degrees, radius: p.fold === 'scored' ? 0 : p.thickness.mm / 2, direction },
});

/** Whether a point lies in a slot of a bend line, edges included. */
const isInSlot = (p: PedalArm, { at, along, half }: BendLine, { x, y }: Point): boolean => {
  const off = Math.abs((x - at.x) * along.y - (y - at.y) * along.x);
  const beyond = Math.abs((x - at.x) * along.x + (y - at.y) * along.y) - half;
  return off <= p.slotWidth.mm / 2 + EDGE && beyond <= p.slotWidth.mm;
};

/** The seat that a pad plate is welded to, and the slots, where no cut may start. */
function outlineFeature(p: PedalArm, { pad, bends }: Layout, contour: Contour): CutFeature {
  const seat = nearestOnContour(contour, { x: pad.x, y: pad.y + p.headHeight.mm / 2 }).segment;
  const slots = p.fold === 'slots' ? bends : [];
  const edges = segmentsOf(contour).flatMap((segment, index): readonly EdgeUse[] =>
    slots.some((line) => isInSlot(p, line, pointAlong(segment, 0.5)))
      ? [{ segment: index, role: 'bend' }]
      : p.pad === 'welded' && index === seat
        ? [{ segment: index, role: 'weld' }]
        : [],
  );
  return {
    id: 'outline',
    name: 'outline',
    purpose: 'outline',
    contour,
    ...(edges.length === 0 ? {} : { edges }),
  };
}

/** Places for the label: along the middle of each leg. */
const labelPlaces = ({ legs }: Layout): readonly Point[] =>
  [...legs]
    .reverse()
    .flatMap((leg) => [0.5, 0.35, 0.65, 0.8, 0.2].map((share) => placeOn(leg, share * leg.length).at));

/** Both lines of a joggle stand on the last straight before the pad. */
function joggleFits({ bends, reach }: Layout): boolean {
  const lines = bends.filter(({ id }) => id !== 'bend.pad');
  const places = lines.map(
    ({ at }) => (at.x - reach.from.x) * reach.along.x + (at.y - reach.from.y) * reach.along.y,
  );
  return places.length === 2 && places.every((along) => along > 0 && along < reach.length);
}

/** What does not go together before anything is drawn. */
function contradiction(p: PedalArm, layout: Layout): readonly [field: string, says: string] | undefined {
  if (2 * p.tubeWall.mm >= p.tubeOutside.mm) {
    return ['tubeWall', `A wall of ${p.tubeWall.mm} mm leaves no bore in a tube of ${p.tubeOutside.mm} mm.`];
  }
  if (p.fold === 'scored' && layout.bends.length > 0 && p.groove.mm >= p.thickness.mm) {
    return [
      'groove',
      `A groove of ${p.groove.mm} mm goes through ${p.thickness.mm} mm plate; half of it is the most.`,
    ];
  }
  if (p.stopOn === 'arm' && layout.stop === undefined) {
    return [
      'stopRadius',
      `At ${p.stopRadius.mm} mm from the pivot there is no straight edge for the stops; nearer, or a tab would do.`,
    ];
  }
  if (layout.springs.includes(undefined)) {
    return [
      'springAt',
      `The springs’ holes, ${p.springAt.mm} mm from the pivot and on, run past the arm’s end.`,
    ];
  }
  if (p.jogOffset !== undefined && !joggleFits(layout)) {
    return [
      p.jogAt === undefined ? 'jogOffset' : 'jogAt',
      `A joggle of ${p.jogOffset.mm} mm does not fit on the straight before the pad; a smaller or steeper one, or a longer arm would do.`,
    ];
  }
  const narrow = layout.bends.find(({ half, bridge }) => 2 * half - bridge < 4 * p.slotWidth.mm);
  if (p.fold === 'slots' && narrow !== undefined) {
    return [
      'bridge',
      `On a line of ${(2 * narrow.half).toFixed(1)} mm a bridge of ${narrow.bridge.toFixed(1)} mm leaves no room for slots; a smaller bridge would do.`,
    ];
  }
  return undefined;
}

/** An inside corner with less than this is as good as sharp, mm. */
const SHARP = 3;

/** Said when an inside corner had no room for the radius asked for. */
const tighterCorner = (p: PedalArm, radius: number): Finding => ({
  code: 'inside-corner',
  level: radius < SHARP ? 'caution' : 'note',
  stage: 'draw',
  subject: { featureId: 'outline' },
  field: 'fillet',
  title:
    radius === 0
      ? 'An inside corner is sharp: there is no room for a radius'
      : `An inside corner has room for R${Number(radius.toFixed(2))} mm only`,
  says: `${p.fillet.mm} mm was asked for; the edges beside the corner are too short. It is drawn with what fits; a sharp one starts a crack, so grind it round.`,
  value: { amount: radius, unit: 'mm' },
  limit: { amount: p.fillet.mm, unit: 'mm' },
  source: { title: 'Plane geometry', where: 'an arc tangent to both edges', certainty: 'common practice' },
});

/** Parameters to the flat part. */
export function drawPedalArm(p: PedalArm): Staged<Part | undefined> {
  const layout = layoutOf(p);
  const trouble = contradiction(p, layout);
  if (trouble !== undefined) return refuseToDraw('pedal arm', ...trouble);
  const outline = outlineOf(p, layout);
  if (!outline.ok) return refuseToDraw('pedal arm', outline.field, outline.says);
  const springs = layout.springs.flatMap((place, index): readonly Feature[] =>
    place === undefined
      ? []
      : [
          {
            id: `spring.${index + 1}`,
            name: `spring hole ${index + 1}`,
            purpose: 'mark',
            at: place.at,
            hole: { finish: 'drill', size: p.springHole.mm },
          },
        ],
  );
  const plain: readonly Feature[] = [
    outlineFeature(p, layout, outline.contour),
    pivotFeature(p, layout),
    ...layout.pins.map((at, index) => pinFeature(p, at, index)),
    ...springs,
    ...(p.fold === 'scored' ? layout.bends.map((line) => scoreFeature(p, line)) : []),
    ...dimplesOf(p, layout),
  ];
  const label = etchLabel(p.label, p.labelHeight.mm, plain, labelPlaces(layout));
  const findings: readonly Finding[] = [
    ...(label === undefined ? [noRoomForLabel(p.label ?? '')] : []),
    ...(outline.least < p.fillet.mm - EDGE ? [tighterCorner(p, outline.least)] : []),
  ];
  return {
    value: {
      family: pedalArmAbout.id,
      name: NAMES[p.use],
      features: [...plain, ...(label ?? [])],
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
      ...(p.mirrored === 'yes' ? { mirrored: true } : {}),
    },
    findings,
  };
}
