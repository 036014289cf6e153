// Bolt holes of any family: their fields, their size, the feature that each becomes, and what is done to them by hand.
import { circleContour, type Point } from '../../geometry/index.js';
import {
  clearanceHole,
  drillForPercent,
  findThread,
  type ClearanceFit,
  type Thread,
} from '../../handbook/index.js';
import type { Feature, Format, ShopStep } from '../../model/index.js';
import type { FieldKit, HoleWay, NumberEntry } from '../fields/index.js';

/** How much larger than the bolt a clearance hole is. */
export const HOLE_FITS = [
  { value: 'close', label: 'Close' },
  { value: 'normal', label: 'Normal' },
  { value: 'loose', label: 'Loose' },
] as const;

/** Bolt, way of making the holes, and fit: the fields of a set of equal holes. */
export function holeFields(f: FieldKit, group: string, bolt: string, holes = 'clearance') {
  return {
    bolt: f.thread.given({
      title: 'Bolt',
      help: 'Thread of the bolts, for example M10, M10x1.25, 3/8-16.',
      measuring: 'Caliper over the threads, then a thread gauge or a known nut.',
      group,
      default: bolt,
    }),
    holes: f.holes.given({
      title: 'Holes',
      help: 'clearance: cut to the clearance size; tapped: marked, drilled and tapped; drill: a centre mark to drill the clearance size from; or a diameter to cut.',
      group,
      min: 1,
      max: 200,
      default: holes,
    }),
    holeFit: f.choice({
      title: 'Hole fit',
      help: 'How much larger than the bolt a clearance hole is (ISO 273, ASME B18.2.8).',
      group,
      choices: HOLE_FITS,
      default: 'normal',
    }),
  };
}

/** Holes as asked for. */
export interface WantedHoles {
  readonly bolt: string;
  readonly holes: HoleWay;
  readonly holeFit: ClearanceFit;
  readonly threadPercent?: NumberEntry | undefined;
}

/** One size of hole. */
export interface SizedHole {
  readonly thread: Thread;
  readonly made: HoleWay['kind'];
  /** Finished hole, mm: clearance, plain, or tap drill. */
  readonly diameter: number;
  /** The drill's name where a drill makes it, for example `F`; may be empty. */
  readonly drill: string;
}

/**
 * Diameter and drill of the holes asked for.
 * @returns the size, or in a sentence why there is none
 * @example sizeHole({ bolt: 'M8', holes: { kind: 'clearance' }, holeFit: 'normal' }) is 9 mm (ISO 273)
 */
export function sizeHole({ bolt, holes, holeFit, threadPercent }: WantedHoles): SizedHole | string {
  const found = findThread(bolt);
  if (!found.found) return found.says;
  const thread = found.row;
  const made = holes.kind;
  if (holes.kind === 'plain') return { thread, made, diameter: holes.diameter.mm, drill: '' };
  if (holes.kind === 'tapped') {
    if (threadPercent === undefined)
      return { thread, made, diameter: thread.tapDrill.diameter, drill: thread.tapDrill.name };
    const diameter = drillForPercent(thread, threadPercent.value);
    return { thread, made, diameter, drill: `${threadPercent.value} % thread` };
  }
  const hole = clearanceHole(thread, holeFit);
  return hole.found ? { thread, made, diameter: hole.row.diameter, drill: hole.row.drill } : hole.says;
}

/** A hole as a feature: an opening when the torch makes it, else a mark to punch and drill from. */
export function holeFeature(id: string, name: string, at: Point, size: SizedHole): Feature {
  const hole = { size: size.diameter, thread: size.thread.name, takes: size.thread.diameter } as const;
  if (size.made === 'tapped' || size.made === 'drill') {
    return {
      id,
      name,
      purpose: 'mark',
      at,
      hole: { ...hole, finish: size.made === 'tapped' ? 'tap' : 'drill' },
    };
  }
  return {
    id,
    name,
    purpose: 'opening',
    contour: circleContour(at, size.diameter / 2, 'opening'),
    hole: { ...hole, finish: 'cut' },
  };
}

/** Pilot drilled on a punch mark before a larger drill, mm, and the drill from which it helps; common practice. */
const HAND_PILOT = 4;
const PILOTED_FROM = 7;

/** Cutting speed of a high-speed steel drill in mild steel, m/min; common practice. */
const DRILL_SPEED = 25;

/** Turns a minute of a drill, to the nearest fifty. */
const drillTurns = (diameter: number): number =>
  Math.max(50, Math.round((DRILL_SPEED * 1000) / (Math.PI * diameter) / 50) * 50);

/** Drilling and tapping of equal holes; nothing when the torch cuts them. */
export function holeSteps(
  size: SizedHole,
  featureIds: readonly string[],
  { length }: Format,
): readonly ShopStep[] {
  if (size.made === 'clearance' || size.made === 'plain' || featureIds.length === 0) return [];
  const drill = `${length(size.diameter)}${size.drill === '' || size.drill.endsWith('mm') ? '' : ` (${size.drill})`}`;
  const count = featureIds.length;
  const pilot = size.diameter >= PILOTED_FROM ? `pilot ${length(HAND_PILOT)}, ` : '';
  const drilled: ShopStep = {
    kind: 'drill',
    says: `Punch ${count} marks, ${pilot}drill ${drill} at about ${drillTurns(size.diameter)} rpm in mild steel, oiled; better through the bolted part when it is at hand.`,
    featureIds,
  };
  return size.made === 'tapped'
    ? [drilled, { kind: 'tap', says: `Tap ${count} × ${size.thread.name}, through.`, featureIds }]
    : [drilled];
}

/** `4 × ⌀9 for M8`, `4 × M8, drill ⌀6.8`: the call-out of equal holes on the print. */
export function holeCallOut(size: SizedHole, count: number, { bare }: Format): string {
  const times = count > 1 ? `${count} × ` : '';
  if (size.made === 'tapped') return `${times}${size.thread.name}, drill ⌀${bare(size.diameter)}`;
  const how = size.made === 'drill' ? 'drill ' : '';
  return `${times}${how}⌀${bare(size.diameter)} for ${size.thread.name}`;
}
