// From what was typed to the ring: its sizes, the stack that fills the gap, and the holes through it.
import type { Point } from '../../geometry/index.js';
import {
  type BoltCircle,
  boltCircleFrom,
  boltHead,
  boltHoles,
  clearanceHole,
  findThread,
  type Thread,
} from '../../handbook/index.js';
import { sizeHole, type SizedHole } from '../shared/holes.js';
import type { RingSpacer } from './parameters.js';
import { bestStack, mergeSheets, type Layer, type Stack } from './stack.js';

export interface RingHoles {
  readonly size: SizedHole;
  readonly circle: BoltCircle;
  readonly places: readonly { readonly featureId: string; readonly at: Point }[];
}

export interface Ring {
  readonly thread: Thread;
  readonly outside: number;
  readonly bore: number;
  readonly stack: Stack;
  /** The layer whose ring this part is. */
  readonly layer: Layer;
  readonly holes: RingHoles | undefined;
}

export type RingResult =
  | { readonly ok: true; readonly value: Ring }
  | { readonly ok: false; readonly field: string; readonly says: string };

/** Most thicknesses that are weighed against each other. */
const MOST_SHEETS = 8;
/** Thicknesses closer than this are the same, mm: finer than a micrometer reads. */
const SAME_THICKNESS = 0.005;

const refuse = (field: string, says: string): RingResult => ({ ok: false, field, says });

const mm = (value: number): string => `${Number(value.toFixed(3))} mm`;

function resolveHoles(
  pattern: NonNullable<RingSpacer['pattern']>,
): { readonly ok: true; readonly value: RingHoles } | Extract<RingResult, { ok: false }> {
  const answer = boltCircleFrom(pattern.circle.measure, pattern.bolts);
  if (!answer.ok) return { ok: false, field: 'pattern.circle', says: answer.problem.says };
  const size = sizeHole(pattern);
  if (typeof size === 'string') return { ok: false, field: 'pattern.holes', says: size };
  const circle = answer.value;
  if (!circle.evenlySpaced) {
    return {
      ok: false,
      field: 'pattern.circle',
      says: 'These centres are not evenly spaced; a ring has its holes evenly on a circle. Give the circle, or draw an adapter plate.',
    };
  }
  return {
    ok: true,
    value: {
      size,
      circle,
      places: boltHoles(circle.diameter, pattern.bolts, pattern.clocking.value).map((at, index) => ({
        featureId: `pattern.hole.${index + 1}`,
        at,
      })),
    },
  };
}

function resolveFresh(p: RingSpacer): RingResult {
  const found = findThread(p.bolt);
  if (!found.found) return refuse('bolt', found.says);
  const thread = found.row;
  const hole = clearanceHole(thread, p.holeFit);
  const bore = p.bore?.mm ?? (hole.found ? hole.row.diameter : undefined);
  if (bore === undefined)
    return refuse('bore', `No clearance hole is known for ${thread.name}; give the bore.`);
  const head = boltHead(thread);
  const washer = head.found
    ? p.washer === 'large'
      ? (head.row.largeWasherOutside ?? head.row.washerOutside)
      : head.row.washerOutside
    : undefined;
  const outside = p.outside?.mm ?? washer;
  if (outside === undefined)
    return refuse('outside', `No washer is known for ${thread.name}; give the outside diameter.`);
  if (outside <= bore) {
    return refuse(
      p.outside === undefined ? 'bore' : 'outside',
      `An outside of ${mm(outside)} leaves no ring round a bore of ${mm(bore)}; a larger outside or a smaller bore would do.`,
    );
  }
  const sheets = p.plates.lengths.map(({ mm: thickness, plusMinus, count }) => ({
    thickness,
    plusMinus,
    most: count,
  }));
  if (mergeSheets(sheets).length > MOST_SHEETS)
    return refuse('plates', `More than ${MOST_SHEETS} thicknesses; leave out those that will not be used.`);
  const stack = bestStack({
    gap: p.gap.mm,
    sheets,
    leastPlay: p.leastPlay.mm,
    mostPlay: Math.max(p.mostPlay.mm, p.leastPlay.mm),
    mostRings: p.mostRings,
    prefer: p.prefer,
  });
  const [thickest] = stack?.layers ?? [];
  if (stack === undefined || thickest === undefined) {
    const thinnest = Math.min(...sheets.map(({ thickness }) => thickness));
    return refuse(
      'plates',
      `Not one ring goes in: the thinnest plate is ${mm(thinnest)}, and the gap less the play that must stay is ${mm(p.gap.mm - p.leastPlay.mm)}. A thinner plate would do.`,
    );
  }
  const wanted = p.drawn?.mm;
  const layer =
    wanted === undefined
      ? thickest
      : stack.layers.find(({ sheet }) => Math.abs(sheet.thickness - wanted) < SAME_THICKNESS);
  if (layer === undefined) {
    const there = stack.layers.map(({ sheet }) => mm(sheet.thickness)).join(', ');
    return refuse('drawn', `The stack has no ring of ${mm(wanted ?? 0)}; it has ${there}.`);
  }
  const holes = p.pattern === undefined ? undefined : resolveHoles(p.pattern);
  if (holes !== undefined && !holes.ok) return holes;
  return { ok: true, value: { thread, outside, bore, stack, layer, holes: holes?.value } };
}

const resolved = new WeakMap<RingSpacer, RingResult>();

/** Resolves parameters; the same parameters object once, since every stage asks for it. */
export function resolveRing(p: RingSpacer): RingResult {
  const known = resolved.get(p);
  if (known !== undefined) return known;
  const fresh = resolveFresh(p);
  resolved.set(p, fresh);
  return fresh;
}
