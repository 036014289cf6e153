// Example parts of the orchard's haul cart for the drawing tests, drawn with the geometry helpers alone.
import { circleContour, makeContour, type Point, type Vertex } from '../../parts-library/geometry/index.js';
import type { Dimension, Feature, Finding, Ghost, Level, Part } from '../../parts-library/model/index.js';
import type { PrintInput, TitleBlock } from '../../parts-library/drawing/index.js';

export type Example = Pick<PrintInput, 'part' | 'dimensions' | 'ghosts' | 'findings'>;

export const polar = (radius: number, degrees: number): Point => ({
  x: radius * Math.cos((degrees * Math.PI) / 180),
  y: radius * Math.sin((degrees * Math.PI) / 180),
});

export const MIDDLE: Point = { x: 0, y: 0 };

const SOURCE = { title: 'Shop rule', where: 'two diameters', certainty: 'common practice' } as const;

export const finding = (level: Level, code: string, anchor: Point | undefined, title: string): Finding => ({
  code,
  level,
  stage: 'check',
  subject: {},
  ...(anchor === undefined ? {} : { anchor }),
  title,
  says: `${title}. Wanted is at least twice the hole’s diameter; a larger outside or a smaller bolt would do.`,
  source: SOURCE,
});

const part = (name: string, features: readonly Feature[], thickness = 6): Part => ({
  family: 'adapter-plate',
  name,
  features,
  material: 'S275',
  thickness,
  quantity: 1,
});

const hole = (id: string, at: Point, diameter: number): Feature => ({
  id,
  name: id,
  purpose: 'opening',
  contour: circleContour(at, diameter / 2, 'opening'),
  hole: { finish: 'cut', size: diameter },
});

const ghostCircle = (
  id: string,
  kind: Ghost['kind'],
  centre: Point,
  diameter: number,
  label?: string,
): Ghost => ({
  id,
  kind,
  shape: { circle: { centre, radius: diameter / 2 } },
  ...(label === undefined ? {} : { label }),
});

/** A plain ring with holes on a bolt circle: the cart's hub flange. */
export function ringPlate(outside: number, holes: number): Example {
  const circle = outside * 0.76;
  const bore = outside * 0.38;
  const bolt = outside * 0.06;
  const centres = Array.from({ length: holes }, (_, i) => polar(circle / 2, 90 + (360 * i) / holes));
  const features: readonly Feature[] = [
    {
      id: 'outline',
      name: 'outline',
      purpose: 'outline',
      contour: circleContour(MIDDLE, outside / 2, 'outline'),
    },
    hole('bore', MIDDLE, bore),
    ...centres.map((at, i) => hole(`pattern1.hole.${i + 1}`, at, bolt)),
  ];
  const text = (mm: number): string => String(Number(mm.toFixed(2)));
  const first = centres[0] ?? MIDDLE;
  const second = centres[1] ?? MIDDLE;
  const dimensions: readonly Dimension[] = [
    {
      id: 'adjacent',
      kind: 'linear',
      along: 'aligned',
      from: first,
      to: second,
      field: 'boltCircle',
      order: 1,
      text: `${text(Math.hypot(first.x - second.x, first.y - second.y))} ±0.1`,
    },
    {
      id: 'circle',
      kind: 'diameter',
      centre: MIDDLE,
      radius: circle / 2,
      order: 2,
      text: `⌀${text(circle)} ±0.17`,
    },
    {
      id: 'holes',
      kind: 'leader',
      at: second,
      field: 'bolt',
      order: 3,
      text: `${holes} × ⌀${text(bolt)} for M${Math.floor(bolt)}`,
    },
    {
      id: 'bore',
      kind: 'diameter',
      centre: MIDDLE,
      radius: bore / 2,
      field: 'bore',
      order: 4,
      text: `⌀${text(bore)}, slip to weld`,
    },
    {
      id: 'outside',
      kind: 'diameter',
      centre: MIDDLE,
      radius: outside / 2,
      field: 'outside',
      order: 5,
      text: `⌀${text(outside)}`,
    },
    {
      id: 'thickness',
      kind: 'leader',
      at: polar(outside / 2, -50),
      field: 'thickness',
      order: 6,
      text: 't 6',
    },
  ];
  return { part: part('Hub flange', features), dimensions, ghosts: [], findings: [] };
}

/** Outline of lobes round holes, hollowed between them by tangent arcs. */
function lobedOutline(count: number, circle: number, lobe: number, scallop: number): readonly Vertex[] {
  const step = Math.PI / count;
  const away = circle * Math.cos(step) + Math.sqrt((lobe + scallop) ** 2 - (circle * Math.sin(step)) ** 2);
  const vertices: Vertex[] = [];
  for (let i = 0; i < count; i++) {
    const angle = Math.PI / 2 + 2 * step * i;
    const centre = { x: circle * Math.cos(angle), y: circle * Math.sin(angle) };
    const towards = (side: 1 | -1): number =>
      Math.atan2(
        away * Math.sin(angle + side * step) - centre.y,
        away * Math.cos(angle + side * step) - centre.x,
      );
    const [enter, leave] = [towards(-1), towards(1)];
    const sweep = (((leave - enter) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
    const middle = enter + sweep / 2;
    const on = (turn: number): Point => ({
      x: centre.x + lobe * Math.cos(turn),
      y: centre.y + lobe * Math.sin(turn),
    });
    // Halved, since a lobe may turn more than half a circle.
    const half = Math.tan(sweep / 8);
    vertices.push({ ...on(enter), bulge: half }, { ...on(middle), bulge: half });
    const hollow = sweep - 2 * step;
    vertices.push({ ...on(leave), bulge: -Math.tan(hollow / 4) });
  }
  return vertices;
}

/** The cart's rear adapter: lobes round tapped holes, a hub to weld in, a chain round it all. */
export function lobedAdapter(size = 150, count = 5): Example {
  const s = size / 150;
  const circle = 57 * s;
  const lobe = Math.min(18 * s, circle * Math.sin(Math.PI / count) * 0.8);
  const scallop = count <= 6 ? 26 * s : 10 * s;
  const bore = 45 * s;
  const centres = Array.from({ length: count }, (_, i) => polar(circle, 90 + (360 * i) / count));
  const features: readonly Feature[] = [
    {
      id: 'outline',
      name: 'outline',
      purpose: 'outline',
      contour: makeContour(lobedOutline(count, circle, lobe, scallop), { direction: 'outline' }),
    },
    hole('bore', MIDDLE, bore),
    ...centres.map((at, i): Feature => ({
      id: `pattern1.hole.${i + 1}`,
      name: `bolt hole ${i + 1}`,
      purpose: 'mark',
      at,
      hole: { finish: 'tap', size: 8.5 * s, thread: 'M10', takes: 10 * s },
    })),
  ];
  const ghosts: readonly Ghost[] = [
    ghostCircle('pattern1.circle', 'bolt-circle', MIDDLE, circle * 2),
    ...centres.map((at, i) => ghostCircle(`head.${i + 1}`, 'bolt-head', at, 17 * s)),
    ...centres.map((at, i) => ghostCircle(`thread.${i + 1}`, 'thread', at, 10 * s)),
    ghostCircle('socket', 'socket', centres[0] ?? MIDDLE, 24 * s, 'socket'),
    ghostCircle('hub', 'hub', MIDDLE, 30 * s, 'hub'),
    ghostCircle('weld', 'weld', MIDDLE, 55 * s),
    ghostCircle('sprocket', 'mating-part', MIDDLE, 196 * s, 'sprocket'),
    ghostCircle('chain', 'chain', MIDDLE, 205 * s, '08B × 50 teeth'),
    ghostCircle('sides', 'chain', MIDDLE, 186 * s, 'side plates ⌀190.1'),
  ];
  const first = centres[0] ?? MIDDLE;
  const second = centres[1] ?? MIDDLE;
  const last = centres[count - 1] ?? MIDDLE;
  const dimensions: readonly Dimension[] = [
    {
      id: 'adjacent',
      kind: 'linear',
      along: 'aligned',
      from: first,
      to: second,
      field: 'boltCircle',
      order: 1,
      text: '67.01 ±0.1',
    },
    { id: 'circle', kind: 'diameter', centre: MIDDLE, radius: circle, order: 2, text: '⌀114 ±0.17' },
    {
      id: 'holes',
      kind: 'leader',
      at: last,
      field: 'bolt',
      order: 3,
      text: `${count} × drill ⌀8.5, tap M10`,
    },
    {
      id: 'bore',
      kind: 'diameter',
      centre: MIDDLE,
      radius: bore / 2,
      field: 'hub',
      order: 4,
      text: '⌀45, slip to weld',
    },
    {
      id: 'lobe',
      kind: 'radius',
      centre: second,
      radius: lobe,
      degrees: 90 + 360 / count,
      field: 'edge',
      order: 5,
      text: 'lobe R18',
    },
    {
      id: 'scallop',
      kind: 'leader',
      at: polar(
        circle * Math.cos(Math.PI / count) +
          Math.sqrt((lobe + scallop) ** 2 - (circle * Math.sin(Math.PI / count)) ** 2) -
          scallop,
        90 + (360 / count) * 2.5,
      ),
      field: 'scallop',
      order: 6,
      text: 'scallop R26',
    },
    {
      id: 'clocking',
      kind: 'angle',
      centre: MIDDLE,
      radius: circle,
      fromDegrees: 90 - 360 / count,
      toDegrees: 90,
      field: 'clocking',
      order: 7,
      text: `${Number((360 / count).toFixed(1))}°`,
    },
    {
      id: 'thickness',
      kind: 'leader',
      at: polar(circle + lobe, 90 + (360 / count) * 3),
      field: 'thickness',
      order: 8,
      text: 't 6 ±0.2',
    },
  ];
  const findings: readonly Finding[] = [
    finding('caution', 'thread-strip', centres[2], 'M10 in 6 mm S275 holds 62 % of the bolt'),
    finding('caution', 'bolt-up', centres[3], 'May not bolt up: 0.04 mm short'),
    finding('note', 'weld-leg', polar(bore / 2 + 3 * s, 270), 'Fillet 5 mm both sides, 5 % used'),
  ];
  return { part: part('Adapter plate, rear', features), dimensions, ghosts, findings };
}

/** The same adapter with twelve dimensions and eight findings: as full as a print gets. */
export function crowdedAdapter(size: number, count: number): Example {
  const plain = lobedAdapter(size, count);
  const s = size / 150;
  const at = (i: number): Point => polar(57 * s, 90 + (360 * i) / count);
  const more: readonly Dimension[] = [
    {
      id: 'across',
      kind: 'linear',
      along: 'x',
      from: at(1),
      to: at(count - 1),
      order: 9,
      text: 'across 108.42',
      field: 'across',
    },
    {
      id: 'height',
      kind: 'linear',
      along: 'y',
      from: at(0),
      to: at(Math.floor(count / 2)),
      order: 10,
      text: '103.1',
      field: 'height',
    },
    {
      id: 'from-bore',
      kind: 'linear',
      along: 'aligned',
      from: polar(22.5 * s, 90),
      to: at(0),
      order: 11,
      text: '34.5',
      field: 'fromBore',
    },
    {
      id: 'hub-outside',
      kind: 'diameter',
      centre: MIDDLE,
      radius: 15 * s,
      order: 12,
      text: 'hub ⌀30 finished',
      field: 'hubOutside',
    },
  ];
  const findings: readonly Finding[] = [
    finding('stop', 'edge-distance', at(0), 'Edge distance 18 mm, 20 wanted'),
    finding('stop', 'web', polar(38 * s, 90 + 180 / count), 'Web 9 mm, 12 wanted'),
    ...plain.findings,
    finding('note', 'bore-fit', polar(22.5 * s, 200), 'Bore fit 0.2 to 0.6 mm'),
    finding('note', 'socket-room', at(0), 'Socket clears the weld by 3.1 mm'),
    finding('note', 'bearing', at(1), 'Bearing 41 MPa, 12 % used'),
    finding('pass', 'plate-size', undefined, 'Fits the plate'),
  ];
  return { ...plain, dimensions: [...plain.dimensions, ...more], findings };
}

/** A bracket with two holes and a bend line: linear dimensions, stacked. */
export function bentBracket(): Example {
  const contour = makeContour(
    [
      { x: 0, y: 0, bulge: 0 },
      { x: 110, y: 0, bulge: 0 },
      { x: 110, y: 50, bulge: 0 },
      { x: 0, y: 50, bulge: 0 },
    ],
    { direction: 'outline' },
  );
  const slot = makeContour(
    [
      { x: 80, y: 20, bulge: 0 },
      { x: 95, y: 20, bulge: 1 },
      { x: 95, y: 30, bulge: 0 },
      { x: 80, y: 30, bulge: 1 },
    ],
    { direction: 'opening' },
  );
  const features: readonly Feature[] = [
    { id: 'outline', name: 'outline', purpose: 'outline', contour },
    hole('holeA', { x: 22, y: 25 }, 11),
    { id: 'slot', name: 'slot', purpose: 'opening', contour: slot },
    {
      id: 'bend',
      name: 'bend line',
      purpose: 'score',
      path: {
        vertices: [
          { x: 55, y: 0, bulge: 0 },
          { x: 55, y: 50, bulge: 0 },
        ],
      },
      bend: { degrees: 90, radius: 6, direction: 'up' },
    },
  ];
  const bends = [-5, 5].map((off): Ghost => ({
    id: `bend.${off}`,
    kind: 'folded',
    shape: {
      path: {
        vertices: [
          { x: 55 + off, y: 0, bulge: 0 },
          { x: 55 + off, y: 50, bulge: 0 },
        ],
      },
    },
  }));
  const linear = (
    id: string,
    along: 'x' | 'y',
    from: Point,
    to: Point,
    order: number,
    text: string,
  ): Dimension => ({ id, kind: 'linear', along, from, to, order, text, field: id });
  const dimensions: readonly Dimension[] = [
    linear('width', 'y', { x: 110, y: 0 }, { x: 110, y: 50 }, 1, '50'),
    linear('flat', 'x', { x: 0, y: 0 }, { x: 110, y: 0 }, 2, 'flat 110.0'),
    linear('bendAt', 'x', { x: 0, y: 50 }, { x: 55, y: 50 }, 3, '55.0'),
    linear('holeA', 'x', { x: 0, y: 25 }, { x: 22, y: 25 }, 4, '22'),
    linear('slotAt', 'x', { x: 95, y: 25 }, { x: 110, y: 25 }, 5, '15'),
    linear('slotLong', 'x', { x: 80, y: 25 }, { x: 95, y: 25 }, 6, '15'),
    {
      id: 'bend',
      kind: 'leader',
      at: { x: 55, y: 37.5 },
      field: 'bend',
      order: 7,
      text: 'bend up 90° R6',
    },
    { id: 'holes', kind: 'leader', at: { x: 22, y: 25 }, field: 'bolt', order: 8, text: '⌀11 for M10' },
  ];
  return {
    part: part('Battery bracket', features, 5),
    dimensions,
    ghosts: bends,
    findings: [finding('caution', 'bend-hole', { x: 60, y: 10 }, 'Bend zone reaches the edge')],
  };
}

export const TITLE: TitleBlock = {
  part: 'Adapter plate, rear',
  job: 'Haul cart',
  material: 'S275',
  thickness: '6 mm',
  quantity: '1',
  mass: '0.31 kg',
  cutLength: '624 mm',
  pierces: '2',
  marks: '5',
  time: '0:41 ±8 s',
  date: '2025-03-14',
  revision: '3',
};
