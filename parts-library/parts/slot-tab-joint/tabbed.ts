// The plate with tabs: shoulders on the joint line, tabs below it, reliefs at their roots, chamfers at their ends.
import { makeContour, relieveCorners, type Point, type Vertex } from '../../geometry/index.js';
import type { CutFeature, EdgeUse } from '../../model/index.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import { roundText } from '../shared/words.js';
import type { Joint } from './joint.js';
import type { SlotTabJoint } from './parameters.js';

/** A corner, and the relief that it gets. */
interface Corner extends Point {
  readonly relief: number;
}

const QUARTER = Math.tan(Math.PI / 8);

/** The lower edge from left to right: shoulder, tab, shoulder and so on. */
function tabCorners(p: SlotTabJoint, joint: Joint): readonly Corner[] {
  const relief = p.relief.mm;
  const c = p.chamfer.mm;
  const low = -joint.projection;
  return joint.centres.flatMap((middle): readonly Corner[] => {
    const [left, right] = [middle - joint.tabWidth / 2, middle + joint.tabWidth / 2];
    const ends: readonly Point[] =
      c === 0
        ? [
            { x: left, y: low },
            { x: right, y: low },
          ]
        : [
            { x: left, y: low + c },
            { x: left + c, y: low },
            { x: right - c, y: low },
            { x: right, y: low + c },
          ];
    return [
      { x: left, y: 0, relief },
      ...ends.map((end) => ({ ...end, relief: 0 })),
      { x: right, y: 0, relief },
    ];
  });
}

/** The two corners away from the joint, rounded. */
function upperCorners(half: number, height: number, radius: number): readonly Vertex[] {
  if (radius === 0)
    return [
      { x: half, y: height, bulge: 0 },
      { x: -half, y: height, bulge: 0 },
    ];
  return [
    { x: half, y: height - radius, bulge: QUARTER },
    { x: half - radius, y: height, bulge: 0 },
    { x: -half + radius, y: height, bulge: QUARTER },
    { x: -half, y: height - radius, bulge: 0 },
  ];
}

function refuseSizes(p: SlotTabJoint, joint: Joint): Resolved<never> | undefined {
  const most = Math.min(p.length.mm / 2, p.height.mm);
  if (p.corner.mm >= most)
    return refusal(
      'corner',
      `Corners of ${roundText(p.corner.mm)} mm do not fit on a plate ${roundText(p.length.mm)} × ${roundText(p.height.mm)} mm.`,
    );
  if (p.chamfer.mm >= Math.min(joint.tabWidth / 2, joint.projection))
    return refusal(
      'chamfer',
      `A chamfer of ${roundText(p.chamfer.mm)} mm uses up a tab ${roundText(joint.tabWidth)} × ${roundText(joint.projection)} mm.`,
    );
  // A bite takes √2 of its radius from both sides of its corner.
  const bite = Math.SQRT2 * p.relief.mm;
  const room = Math.min(
    joint.projection - p.chamfer.mm,
    p.length.mm / 2 + (joint.centres[0] ?? 0) - joint.tabWidth / 2,
    ((joint.centres[1] ?? Infinity) - (joint.centres[0] ?? 0) - joint.tabWidth) / 2,
  );
  return bite >= room
    ? refusal(
        'relief',
        `Reliefs of ${roundText(p.relief.mm)} mm take ${roundText(bite)} mm of a side that has ${roundText(room)} mm; a smaller relief, chamfer, or longer tabs and shoulders would do.`,
      )
    : undefined;
}

/** Shoulders and sides of the tabs meet the other plate; the ends of the tabs are welded. */
function edgesOf(contour: CutFeature['contour'], joint: Joint): readonly EdgeUse[] {
  return contour.flatMap((vertex, segment): readonly EdgeUse[] => {
    const next = contour[(segment + 1) % contour.length];
    if (next === undefined || vertex.bulge !== 0) return [];
    const isAt = (y: number): boolean => Math.abs(vertex.y - y) < 1e-6 && Math.abs(next.y - y) < 1e-6;
    if (isAt(-joint.projection)) return [{ segment, role: 'weld' }];
    const isSide = Math.abs(vertex.x - next.x) < 1e-6 && Math.max(vertex.y, next.y) <= 0;
    return isAt(0) || isSide ? [{ segment, role: 'mating' }] : [];
  });
}

/** The outline of the tabbed plate, joint line at y = 0, tabs below it. */
export function tabbedPlate(p: SlotTabJoint, joint: Joint): Resolved<CutFeature> {
  const refused = refuseSizes(p, joint);
  if (refused !== undefined) return refused;
  const half = p.length.mm / 2;
  const lower: readonly Corner[] = [
    { x: -half, y: 0, relief: 0 },
    ...tabCorners(p, joint),
    { x: half, y: 0, relief: 0 },
  ];
  // The lower edge is relieved as a polygon of its own, closed over the top; the rounded corners replace that closure.
  const closed = [...lower, { x: half, y: p.height.mm, relief: 0 }, { x: -half, y: p.height.mm, relief: 0 }];
  const relieved = relieveCorners(closed, (index) => closed[index]?.relief ?? 0);
  const contour = makeContour([...relieved.slice(0, -2), ...upperCorners(half, p.height.mm, p.corner.mm)], {
    direction: 'outline',
  });
  return {
    ok: true,
    value: { id: 'outline', name: 'outline', purpose: 'outline', contour, edges: edgesOf(contour, joint) },
  };
}
