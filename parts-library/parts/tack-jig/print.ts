// Derived values, ghosts, steps and hardware of a tack jig.
import type { Facts } from '../../checks/index.js';
import { polygonContour, type Point } from '../../geometry/index.js';
import type { Derived, Ghost, HardwareItem, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { boltItems, headGhosts } from '../shared/bolted.js';
import { holeSteps } from '../shared/holes.js';
import { lineGhost } from '../shared/mating.js';
import { DEBURR } from '../shared/weld-steps.js';
import { roundText } from '../shared/words.js';
import type { StopSlot } from './bed.js';
import { crossing, heldAngle, legsOf } from './frame.js';
import type { TackJig } from './parameters.js';
import { resolveJig } from './resolve.js';

/** Distance across the corner between marks on both outer sides, by the law of cosines, mm. */
const diagonalOf = (a: number, b: number, degrees: number): number =>
  Math.sqrt(a * a + b * b - 2 * a * b * Math.cos((degrees * Math.PI) / 180));

/** A stop stands two thirds of the tube's height over the bed. */
const STOP_SHARE = 2 / 3;
const stopLength = (p: TackJig): number => Math.round(p.thickness.mm + STOP_SHARE * p.tall.mm);

export function tackJigDerived(_part: Part, p: TackJig, { format }: DrawContext): readonly Derived[] {
  const answer = resolveJig(p);
  if (!answer.ok) return [];
  const { bed } = answer.value;
  const diagonal = diagonalOf(p.legA.mm, p.legB.mm, heldAngle(p));
  return [
    {
      id: 'diagonal',
      field: 'angle',
      title: 'diagonal',
      value: { amount: diagonal, unit: 'mm' },
      text: `${format.length(diagonal)} between marks ${format.length(p.legA.mm)} and ${format.length(p.legB.mm)} from the corner, at ${roundText(heldAngle(p))}°`,
    },
    ...(bed === undefined
      ? []
      : [
          {
            id: 'slot',
            field: 'clearance',
            title: 'stop slots',
            value: { amount: bed.slotWidth, unit: 'mm' as const },
            text: `${format.length(bed.slotLength)} × ${format.length(bed.slotWidth)} for stops ${format.length(p.stopWidth.mm)} × ${format.length(p.stop.mm)}`,
          },
          {
            id: 'span',
            field: 'legA',
            title: 'stops apart',
            value: { amount: bed.spans.a.far - bed.spans.a.near, unit: 'mm' as const },
            text: `${format.length(bed.spans.a.far - bed.spans.a.near)} along the first tube, ${format.length(bed.spans.b.far - bed.spans.b.near)} along the second`,
          },
        ]),
  ];
}

/** How far the tubes are shown beyond the jig, mm. */
const BEYOND = 15;

/** The two tubes, mitred or butted, with their joint line. */
function tubeGhosts(p: TackJig): readonly Ghost[] {
  const [a, b] = legsOf(p);
  const isBed = p.kind === 'bed';
  // A square lies inside the corner: its origin is the tubes' inner corner.
  const [v0, vA, vB] = isBed ? [0, a.tube, b.tube] : [0, -a.tube, -b.tube];
  const near: Point = crossing(p, v0, v0);
  const far: Point = crossing(p, vA, vB);
  const onA = crossing(p, vA, v0);
  const beyond = isBed ? BEYOND : BEYOND + p.weldRoom.mm;
  const ring = (points: readonly Point[]) => ({ contour: polygonContour(points, { direction: 'outline' }) });
  const [endA, endB] = [a.length + beyond, b.length + beyond];
  const first =
    p.joint === 'mitre'
      ? [near, a.at(endA, v0), a.at(endA, vA), far]
      : isBed
        ? [near, a.at(endA, v0), a.at(endA, vA), onA]
        : [crossing(p, v0, vB), a.at(endA, v0), a.at(endA, vA), far];
  const second =
    p.joint === 'mitre'
      ? [near, far, b.at(endB, vB), b.at(endB, v0)]
      : isBed
        ? [onA, far, b.at(endB, vB), b.at(endB, v0)]
        : [near, crossing(p, v0, vB), b.at(endB, vB), b.at(endB, v0)];
  return [
    { id: 'tube.a', kind: 'mating-part', label: 'first tube', shape: ring(first) },
    { id: 'tube.b', kind: 'mating-part', label: 'second tube', shape: ring(second) },
  ];
}

/** A stop seen from above. */
function stopGhost(p: TackJig, { id, leg, u, v }: StopSlot): Ghost {
  const [w, s] = [p.stopWidth.mm / 2, p.stop.mm / 2];
  const corners = [leg.at(u - w, v - s), leg.at(u + w, v - s), leg.at(u + w, v + s), leg.at(u - w, v + s)];
  return {
    id: `${id}.plate`,
    kind: 'mating-part',
    shape: { contour: polygonContour(corners, { direction: 'outline' }) },
  };
}

export function tackJigGhosts(_part: Part, p: TackJig, _facts: Facts): readonly Ghost[] {
  const answer = resolveJig(p);
  if (!answer.ok) return [];
  const { bed } = answer.value;
  if (bed === undefined) return tubeGhosts(p);
  const { straps } = bed;
  const pairs = straps?.holes ?? [];
  return [
    ...tubeGhosts(p),
    ...bed.slots.map((slot) => stopGhost(p, slot)),
    ...(straps === undefined ? [] : headGhosts(straps.size, straps.holes)),
    ...pairs.flatMap((outer, index): readonly Ghost[] => {
      const inner = pairs[index + 1];
      return index % 2 === 0 && inner !== undefined
        ? [lineGhost(`${outer.featureId}.strap`, 'mating-part', outer.at, inner.at)]
        : [];
    }),
  ];
}

export function tackJigSteps(_part: Part, p: TackJig, facts: Facts): readonly ShopStep[] {
  const answer = resolveJig(p);
  if (!answer.ok) return [];
  const { bed } = answer.value;
  const { length } = facts.format;
  const diagonal = diagonalOf(p.legA.mm, p.legB.mm, heldAngle(p));
  const use: readonly ShopStep[] = [
    {
      kind: 'measure',
      says: `Check the jig by its diagonal: ${length(diagonal)} between marks ${length(p.legA.mm)} and ${length(p.legB.mm)} from the corner.`,
    },
    {
      kind: 'tack',
      says: 'Tubes in, wedged or clamped, tacked on all four sides; measure the diagonal again before the frame leaves the jig.',
    },
    {
      kind: 'caution',
      says: 'Spatter spray on the jig, zinc and paint off the tubes, closed tubes vented; no chlorinated cleaner near an arc.',
    },
  ];
  if (bed === undefined) {
    return [
      DEBURR,
      {
        kind: 'grind',
        says: 'Dress both reference edges straight against a rule; no nub may stand on them.',
        featureIds: ['outline'],
      },
      ...use,
    ];
  }
  return [
    DEBURR,
    {
      kind: 'measure',
      says: `Try a stop of ${length(p.stop.mm)} in each slot before the plate leaves the table.`,
      featureIds: bed.slots.map(({ id }) => id),
    },
    ...(bed.straps === undefined
      ? []
      : holeSteps(
          bed.straps.size,
          bed.straps.holes.map(({ featureId }) => featureId),
          facts.format,
        )),
    {
      kind: 'fit',
      says: `Drive ${bed.slots.length} stops in from above, square to the bed, their inner faces against a straight tube; weld them from below in short runs.`,
      featureIds: bed.slots.map(({ id }) => id),
    },
    ...use,
  ];
}

export function tackJigHardware(_part: Part, p: TackJig, facts: Facts): readonly HardwareItem[] {
  const answer = resolveJig(p);
  if (!answer.ok) return [];
  const { bed } = answer.value;
  const { format } = facts;
  if (bed === undefined) {
    return p.clamps === 0
      ? []
      : [
          {
            id: 'clamps',
            kind: 'bar',
            name: `screw clamp, opens ${format.length(Math.max(p.tubeA.mm, p.tubeB.mm) + p.clampLand.mm + 20)} at least`,
            quantity: 2 * p.clamps,
          },
        ];
  }
  const into = bed.straps?.size.made === 'tapped';
  return [
    {
      id: 'stops',
      kind: 'bar',
      name: `flat ${format.bare(p.stopWidth.mm)} × ${format.bare(p.stop.mm)} for stops`,
      quantity: bed.slots.length,
      length: stopLength(p),
      says: 'One end square; it stands on edge in its slot, flush with the underside.',
    },
    {
      id: 'wedges',
      kind: 'bar',
      name: `flat ${format.bare(p.wedgeGap.mm + 3)} wide, ground to a taper of 1 in 10, for wedges`,
      quantity: 2,
      length: 80,
    },
    ...(bed.straps === undefined
      ? []
      : boltItems(
          {
            id: 'straps',
            bolt: p.clampBolt,
            count: bed.straps.holes.length,
            // Tube and a strap as thick as the stops.
            grip: p.tall.mm + p.stop.mm + (into ? 0 : p.thickness.mm),
            ...(into ? { into: p.thickness.mm } : {}),
          },
          format,
        )),
  ];
}
