// What stands round the arm: tube, weld, pad, rod or cable, stop screws, and the whole of it at the end of its swing.
import type { Facts } from '../../checks/index.js';
import {
  polygonContour,
  rectangleContour,
  transformContour,
  transformPath,
  type OpenPath,
  type Point,
} from '../../geometry/index.js';
import type { LinkState } from '../../handbook/index.js';
import { outlineOf, type Ghost, type Part } from '../../model/index.js';
import { weldLegOf } from './check-pivot.js';
import { layoutOf, type Layout } from './layout.js';
import { motionOf, type Motion, type StopScrew } from './motion.js';
import type { PedalArm } from './parameters.js';

const ORIGIN: Point = { x: 0, y: 0 };
const line = (from: Point, to: Point): OpenPath => ({
  vertices: [
    { ...from, bulge: 0 },
    { ...to, bulge: 0 },
  ],
});

/** Length and half width of a stop screw as it is sketched, mm. */
const SCREW = { length: 22, half: 4 } as const;
/** A rod or cable is drawn so far, mm. */
const LONGEST_LINK = 90;

function pivotGhosts(p: PedalArm, layout: Layout, facts: Facts): readonly Ghost[] {
  const outside = p.tubeOutside.mm / 2;
  const circle = (id: string, kind: Ghost['kind'], radius: number, label?: string): Ghost => ({
    id,
    kind,
    shape: { circle: { centre: ORIGIN, radius } },
    ...(label === undefined ? {} : { label }),
  });
  const { bare } = facts.format;
  return [
    circle('tube', 'hub', outside, `tube ${bare(p.tubeOutside.mm)} × ${bare(p.tubeWall.mm)}`),
    circle('tube.bore', 'hub', outside - p.tubeWall.mm),
    ...(p.pivot === 'welded'
      ? [circle('weld', 'weld', layout.bore / 2 + weldLegOf(p, facts.format.unit))]
      : []),
  ];
}

/** A pad plate from its edge; the line of a folded one's bend. */
function padGhosts(p: PedalArm, { pad, bends }: Layout): readonly Ghost[] {
  const top = pad.y + p.headHeight.mm / 2;
  const plate: readonly Ghost[] =
    p.pad === 'welded'
      ? [
          {
            id: 'pad',
            kind: 'mating-part',
            shape: {
              contour: rectangleContour(
                {
                  centre: { x: pad.x, y: top + p.padThickness.mm / 2 },
                  width: p.padLength.mm,
                  height: p.padThickness.mm,
                },
                'outline',
              ),
            },
          },
        ]
      : [];
  const lines = bends.map(({ id, at, along, half }): Ghost => ({
    id: `${id}.line`,
    kind: 'folded',
    shape: {
      path: line(
        { x: at.x - along.x * half, y: at.y - along.y * half },
        { x: at.x + along.x * half, y: at.y + along.y * half },
      ),
    },
  }));
  return [...plate, ...lines];
}

function screwGhost({ id, tip, away }: StopScrew): Ghost {
  const side = { x: -away.y * SCREW.half, y: away.x * SCREW.half };
  const far = { x: tip.x + away.x * SCREW.length, y: tip.y + away.y * SCREW.length };
  return {
    id: `stop.${id}`,
    kind: 'bolt-head',
    label: id === 'rest' ? 'rest stop' : 'forward stop',
    shape: {
      contour: polygonContour(
        [
          { x: tip.x - side.x, y: tip.y - side.y },
          { x: far.x - side.x, y: far.y - side.y },
          { x: far.x + side.x, y: far.y + side.y },
          { x: tip.x + side.x, y: tip.y + side.y },
        ],
        { direction: 'outline' },
      ),
    },
  };
}

/** A rod or cable, drawn no longer than shows where it goes. */
function linkLine(from: Point, to: Point): OpenPath {
  const far = Math.hypot(to.x - from.x, to.y - from.y);
  const share = Math.min(1, LONGEST_LINK / far);
  return line(from, { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share });
}

function linkGhosts({ link, rest, atEnd }: Motion): readonly Ghost[] {
  const label = link.kind === 'rod' ? 'push rod' : 'cable';
  const ghost = (id: string, { pin, seat }: LinkState, words?: string): Ghost => ({
    id,
    kind: 'mating-part',
    ...(words === undefined ? {} : { label: words }),
    shape: { path: linkLine(pin, seat) },
  });
  return [
    ...(rest === undefined ? [] : [ghost('link.rest', rest, label)]),
    ...(atEnd === undefined || atEnd.swing === 0 ? [] : [ghost('link.full', atEnd)]),
  ];
}

/** The arm and its pad turned to the end of the swing. */
function swungGhosts(part: Part, p: PedalArm, layout: Layout, motion: Motion): readonly Ghost[] {
  if (motion.end <= 0) return [];
  const turn = { rotateDegrees: -motion.end };
  const pad = padGhosts(p, layout).find(({ id }) => id === 'pad');
  const shape =
    pad === undefined
      ? undefined
      : 'contour' in pad.shape
        ? { contour: transformContour(pad.shape.contour, turn) }
        : 'path' in pad.shape
          ? { path: transformPath(pad.shape.path, turn) }
          : undefined;
  return [
    {
      id: 'swing.full',
      kind: 'mating-part',
      label: `at ${Number(motion.end.toFixed(1))}°`,
      shape: { contour: transformContour(outlineOf(part).contour, turn) },
    },
    ...(shape === undefined ? [] : [{ id: 'swing.pad', kind: 'mating-part' as const, shape }]),
  ];
}

export function pedalArmGhosts(part: Part, p: PedalArm, facts: Facts): readonly Ghost[] {
  const layout = layoutOf(p);
  const motion = motionOf(p, layout);
  return [
    ...pivotGhosts(p, layout, facts),
    ...padGhosts(p, layout),
    ...linkGhosts(motion),
    ...motion.screws.map(screwGhost),
    ...swungGhosts(part, p, layout, motion),
  ];
}
