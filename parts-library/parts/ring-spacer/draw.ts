// Draws one ring of the stack, centred on the origin.
import { circleContour, type Point } from '../../geometry/index.js';
import type { Feature, Finding, Part, Staged } from '../../model/index.js';
import { holeFeature } from '../shared/holes.js';
import { etchLabel, noRoomForLabel } from '../shared/label.js';
import { refuseToDraw } from '../shared/refuse.js';
import { ringSpacerAbout } from './about.js';
import type { RingSpacer } from './parameters.js';
import { resolveRing, type Ring } from './resolve.js';

const MIDDLE: Point = { x: 0, y: 0 };

function boreOf(p: RingSpacer, { bore, thread }: Ring): Feature {
  const takes = p.bore === undefined ? { thread: thread.name, takes: thread.diameter } : {};
  const hole = { size: bore, ...takes } as const;
  return p.boreMade === 'drill'
    ? { id: 'bore', name: 'bore', purpose: 'mark', at: MIDDLE, hole: { ...hole, finish: 'drill' } }
    : {
        id: 'bore',
        name: 'bore',
        purpose: 'opening',
        contour: circleContour(MIDDLE, bore / 2, 'opening'),
        hole: { ...hole, finish: 'cut' },
      };
}

/** Under, over and beside the bore, then between the bolts; in the middle of the ring's width. */
function labelPlaces({ outside, bore, holes }: Ring): readonly Point[] {
  const reach = (outside + bore) / 4;
  const between = (holes?.places ?? []).map(
    ({ at }) => Math.atan2(at.y, at.x) + Math.PI / (holes?.places.length ?? 1),
  );
  return [-Math.PI / 2, Math.PI / 2, Math.PI, 0, ...between].map((radians) => ({
    x: reach * Math.cos(radians),
    y: reach * Math.sin(radians),
  }));
}

export function drawRingSpacer(p: RingSpacer): Staged<Part | undefined> {
  const answer = resolveRing(p);
  if (!answer.ok) return refuseToDraw('ring', answer.field, answer.says);
  const ring = answer.value;
  const { holes, layer } = ring;
  const plain: readonly Feature[] = [
    {
      id: 'outline',
      name: 'outline',
      purpose: 'outline',
      contour: circleContour(MIDDLE, ring.outside / 2, 'outline'),
    },
    boreOf(p, ring),
    ...(holes?.places ?? []).flatMap(({ featureId, at }, index) =>
      holes === undefined ? [] : [holeFeature(featureId, `bolt hole ${index + 1}`, at, holes.size)],
    ),
  ];
  const label = etchLabel(p.label, p.labelHeight.mm, plain, labelPlaces(ring));
  const findings: readonly Finding[] = label === undefined ? [noRoomForLabel(p.label ?? '')] : [];
  return {
    value: {
      family: ringSpacerAbout.id,
      name: 'Ring spacer',
      features: [...plain, ...(label ?? [])],
      material: p.material,
      thickness: layer.sheet.thickness,
      quantity: layer.count * p.places,
    },
    findings,
  };
}
