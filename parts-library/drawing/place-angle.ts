// Options for angular dimensions: an arc about the apex with arrows, extension lines along both rays (ISO 129-1).
import type { AngularDimension } from '../model/index.js';
import { segmentHitsBox } from './boxes.js';
import type { DisplayItem, PathCommand } from './display-list.js';
import {
  arrowPath,
  boxOfWords,
  clearanceOf,
  costOfText,
  crossingsFrom,
  drawInk,
  drawLine,
  drawWords,
  pointInArea,
  toSheet,
  type Desk,
  type Words,
} from './desk.js';
import type { Option, Options } from './labels.js';

/** Rows of arcs that are tried on either side of the radius asked for. */
const OUTER_ROWS = 9;
const INNER_ROWS = 5;
const OUTLINE_UNDER_LINE = 2;

/** Chords that stand for the arc when other labels look for collisions. */
const CHORDS = 8;

const RADIANS = Math.PI / 180;

interface Arc {
  readonly x: number;
  readonly y: number;
  /** Sheet angles in radians, y down; `sweep` is positive and runs from `start` clockwise. */
  readonly start: number;
  readonly sweep: number;
  readonly feature: number;
}

function arcOf(desk: Desk, dimension: AngularDimension): Arc {
  const { x, y } = toSheet(desk, dimension.centre.x, dimension.centre.y);
  const turned = (((dimension.toDegrees - dimension.fromDegrees) % 360) + 360) % 360;
  return {
    x,
    y,
    start: -dimension.toDegrees * RADIANS,
    sweep: (turned === 0 ? 360 : turned) * RADIANS,
    feature: dimension.radius * desk.placing.scale,
  };
}

const pointOn = (arc: Arc, radius: number, angle: number): readonly [number, number] => [
  arc.x + radius * Math.cos(angle),
  arc.y + radius * Math.sin(angle),
];

function chordsOf(arc: Arc, radius: number, from: number, to: number): readonly number[] {
  const lines: number[] = [];
  for (let i = 0; i < CHORDS; i++) {
    lines.push(
      ...pointOn(arc, radius, from + ((to - from) * i) / CHORDS),
      ...pointOn(arc, radius, from + ((to - from) * (i + 1)) / CHORDS),
    );
  }
  return lines;
}

/** Along a ray from the feature to just past the arc, on whichever side of it the arc lies. */
function rayOf(desk: Desk, arc: Arc, radius: number, angle: number): readonly number[] {
  const { style } = desk;
  const way = radius >= arc.feature ? 1 : -1;
  if (Math.abs(radius - arc.feature) < style.gap * 1.5) return [];
  return [
    ...pointOn(arc, arc.feature + way * style.gap, angle),
    ...pointOn(arc, radius + way * style.past, angle),
  ];
}

interface Stand {
  readonly x: number;
  readonly y: number;
  readonly ux: number;
  readonly uy: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Ends of the drawn arc, which runs on past an arrow when the text stands beyond it. */
  readonly from: number;
  readonly to: number;
  readonly outside: boolean;
  readonly cost: number;
}

/** Text along the tangent on the outer side of the arc, turned so that it reads from the bottom or the right. */
function tangentStand(
  desk: Desk,
  words: Words,
  arc: Arc,
  radius: number,
  angle: number,
  rest: Pick<Stand, 'from' | 'to' | 'outside' | 'cost'>,
): Stand {
  const { style } = desk;
  const outX = Math.cos(angle);
  const outY = Math.sin(angle);
  let ux = -outY;
  let uy = outX;
  if (ux < -1e-6 || (Math.abs(ux) <= 1e-6 && uy > 0)) {
    ux = -ux;
    uy = -uy;
  }
  // Baseline on the outer side: near the arc where the text stands upright on it, a cap height away where not.
  const standsOnArc = ux * outY - uy * outX < 0;
  const away = standsOnArc ? 0.34 * style.size : 1.0 * style.size;
  const sagitta = standsOnArc ? 0 : words.width ** 2 / (8 * radius) > style.size ? style.size * 0.2 : 0;
  return {
    x: arc.x + (radius + away + sagitta) * outX,
    y: arc.y + (radius + away + sagitta) * outY,
    ux,
    uy,
    anchor: 'middle',
    ...rest,
  };
}

function stands(desk: Desk, words: Words, arc: Arc, radius: number): readonly Stand[] {
  const { style } = desk;
  const length = arc.sweep * radius;
  const end = arc.start + arc.sweep;
  const outside = length < 2.8 * style.arrow;
  const tail = (outside ? 2 * style.arrow : 0) / radius;
  if (length >= words.width + 2 * style.arrow + 2 * style.pad) {
    const inside = { from: arc.start, to: end, outside: false };
    return [0.5, 0.3, 0.7].map((t) =>
      tangentStand(desk, words, arc, radius, arc.start + arc.sweep * t, {
        ...inside,
        cost: t === 0.5 ? 0 : 1,
      }),
    );
  }
  const beyond = (words.width / 2 + style.pad) / radius + tail + style.arrow / radius;
  const span = { from: arc.start - tail, to: end + tail, outside };
  return [
    tangentStand(desk, words, arc, radius + style.size * 0.2, (arc.start + end) / 2, { ...span, cost: 0.8 }),
    tangentStand(desk, words, arc, radius, end + beyond, { ...span, to: end + beyond, cost: 1 }),
    tangentStand(desk, words, arc, radius, arc.start - beyond, {
      ...span,
      from: arc.start - beyond,
      cost: 1,
    }),
  ];
}

function arcPath(arc: Arc, radius: number, from: number, to: number): readonly PathCommand[] {
  const middle = (from + to) / 2;
  return [
    ['M', ...pointOn(arc, radius, from)],
    ['A', radius, 0, 1, ...pointOn(arc, radius, middle)],
    ['A', radius, 0, 1, ...pointOn(arc, radius, to)],
  ];
}

/** Arrowheads follow the arc, so they turn by half the angle that they cover. */
function headsOf(desk: Desk, arc: Arc, radius: number, outside: boolean): readonly PathCommand[] {
  const { style } = desk;
  const lean = style.arrow / (2 * radius);
  const head = (angle: number, clockwise: 1 | -1): readonly PathCommand[] => {
    const [x, y] = pointOn(arc, radius, angle);
    const back = angle - clockwise * lean;
    return arrowPath(x, y, -Math.sin(back) * clockwise, Math.cos(back) * clockwise, style);
  };
  return outside
    ? [...head(arc.start, 1), ...head(arc.start + arc.sweep, -1)]
    : [...head(arc.start, -1), ...head(arc.start + arc.sweep, 1)];
}

function optionAt(
  desk: Desk,
  words: Words,
  arc: Arc,
  radius: number,
  stand: Stand,
  floor: number,
  below: number,
): Option | number {
  const box = boxOfWords(words, stand.x, stand.y, stand.anchor, stand.ux, stand.uy);
  let cost = floor + costOfText(desk, box);
  if (cost >= below) return cost;
  const lines = chordsOf(arc, radius, stand.from, stand.to);
  for (let i = 0; i < lines.length; i += 4) {
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = lines.slice(i, i + 4);
    if (!pointInArea(desk, x1, y1) || !pointInArea(desk, x2, y2)) return Infinity;
    cost += OUTLINE_UNDER_LINE * crossingsFrom(desk, x1, y1, x2, y2);
  }
  if (cost >= below) return cost;
  const extensions = [
    ...rayOf(desk, arc, radius, arc.start),
    ...rayOf(desk, arc, radius, arc.start + arc.sweep),
  ];
  // A narrow angle's own rays would run through a wide text between them.
  for (let i = 0; i < extensions.length; i += 4) {
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = extensions.slice(i, i + 4);
    if (segmentHitsBox(box, x1, y1, x2, y2)) return Infinity;
  }
  for (let i = 0; i < lines.length; i += 4) {
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = lines.slice(i, i + 4);
    if (segmentHitsBox(box, x1, y1, x2, y2)) return Infinity;
  }
  const owner = words.dimensionId === undefined ? {} : { dimensionId: words.dimensionId };
  const draw = (): readonly DisplayItem[] => {
    const rays = Array.from({ length: extensions.length / 4 }, (_, i): readonly PathCommand[] => [
      ['M', extensions[4 * i] ?? 0, extensions[4 * i + 1] ?? 0],
      ['L', extensions[4 * i + 2] ?? 0, extensions[4 * i + 3] ?? 0],
    ]).flat();
    return [
      ...(rays.length > 0 ? [drawLine('extension', rays, owner)] : []),
      drawLine('dimension', arcPath(arc, radius, stand.from, stand.to), owner),
      drawInk('dimension', headsOf(desk, arc, radius, stand.outside), owner),
      drawWords(words, stand.x, stand.y, stand.anchor, stand.ux, stand.uy),
    ];
  };
  return {
    cost,
    box: clearanceOf(desk, box),
    lines,
    extensions,
    strip: null,
    draw,
  };
}

/** All options of an angular dimension; radii and text places are ordered by what is known without looking. */
export function angleOptions(desk: Desk, words: Words, dimension: AngularDimension): Options {
  const { style } = desk;
  const arc = arcOf(desk, dimension);
  const radii = [{ radius: arc.feature, cost: 0 }];
  for (let row = 1; row <= OUTER_ROWS; row++) {
    radii.push({ radius: arc.feature + row * style.row, cost: row * 0.5 });
    if (row <= INNER_ROWS) radii.push({ radius: arc.feature - row * style.row, cost: row * 0.6 });
  }
  const steps = radii
    .filter(({ radius }) => radius >= style.size * 1.5)
    .flatMap(({ radius, cost }) =>
      stands(desk, words, arc, radius).map((stand) => ({ radius, stand, floor: cost + stand.cost })),
    )
    .toSorted((a, b) => a.floor - b.floor);
  return {
    floors: steps.map(({ floor }) => floor),
    at: (index, below) => {
      const step = steps[index];
      return step === undefined
        ? Infinity
        : optionAt(desk, words, arc, step.radius, step.stand, step.floor, below);
    },
  };
}
