// Where a cut starts, and that the start spoils nothing.
import { expect, test } from 'vitest';
import { circleContour, makeContour, polygonContour } from '../../parts-library/geometry/index.js';
import { planCuts } from '../../parts-library/cutting/index.js';
import type { CutContour, CutSettings, PlacedPart } from '../../parts-library/cutting/index.js';
import { sample } from './sampling.js';
import { hole, opening, outline, partOf, place, rectangle, ring, settings, slot } from './shop.js';

function cutOf(placed: readonly PlacedPart[], id: string, with_: CutSettings = settings): CutContour {
  const found = planCuts(placed, with_).value.contours.find(({ featureId }) => featureId === id);
  if (found === undefined) throw new Error(`${id} is not in the plan`);
  return found;
}

const plate = (...features: Parameters<typeof partOf>[1]): PlacedPart =>
  place(partOf('plate', [outline(rectangle(100, 60)), ...features]));

test('a bolt hole of 11 is pierced in its centre and entered radially: lead-in (11 - 1.6) / 2 = 4.7', () => {
  const cut = cutOf([plate(hole('hole', 30, 20, 11))], 'hole');
  expect(cut.leadIn.pierce).toEqual({ x: 30, y: 20 });
  expect(cut.leadIn.length).toBeCloseTo(4.7, 9);
  expect(cut.path[0]?.y).toBeCloseTo(20 - 4.7, 9);
});

test('four kerfs is the smallest hole: 6.4 is cut, 6.3 is a stop that says mark and drill', () => {
  expect(cutOf([plate(hole('hole', 30, 20, 6.4))], 'hole').leadIn.length).toBeCloseTo(2.4, 9);
  const { value, findings } = planCuts([plate(hole('hole', 30, 20, 6.3))], settings);
  expect(value.contours.map(({ featureId }) => featureId)).toEqual(['outline']);
  expect(findings[0]).toMatchObject({
    code: 'lead-in-no-room',
    level: 'stop',
    subject: { featureId: 'hole' },
  });
  expect(findings[0]?.says).toContain('Mark its centre and drill it');
});

test('a rectangle starts at its front left corner, and the slant of 45° runs straight into the left edge', () => {
  const cut = cutOf([plate()], 'outline');
  // Middle of the corner arc of radius 0.8 about (0, 0), at 225 degrees: 0.8 x 0.70711 = 0.5657 left and below.
  expect(cut.path[0]?.x).toBeCloseTo(-0.5657, 4);
  expect(cut.path[0]?.y).toBeCloseTo(-0.5657, 4);
  // Clockwise from there is up the left edge; the torch comes from straight below, 7.3539 long.
  expect(cut.leadIn.pierce.x).toBeCloseTo(-0.5657, 4);
  expect(cut.leadIn.pierce.y).toBeCloseTo(-0.5657 - 7.3539, 4);
});

test('square side left: the same corner from the other side, straight into the front edge', () => {
  const cut = cutOf([plate()], 'outline', { ...settings, squareSide: 'left' });
  expect(cut.leadIn.pierce.x).toBeCloseTo(-0.5657 - 7.3539, 4);
  expect(cut.leadIn.pierce.y).toBeCloseTo(-0.5657, 4);
});

test('thicker plate, longer lead-in: in 10 mm the pierce stands 10 off, (10 - 0.8) / sin 45° = 13.011 along the slant', () => {
  expect(cutOf([plate()], 'outline', { ...settings, thickness: 10 }).leadIn.length).toBeCloseTo(13.0108, 4);
});

test('thin sheet: three kerfs or 4 mm: kerf 1.45 in 3 mm gives 4.35, kerf 1.2 gives 4', () => {
  const window = opening('window', rectangle(40, 30, 'opening', 30, 15));
  const thin = { ...settings, thickness: 3 };
  expect(cutOf([plate(window)], 'window', { ...thin, kerf: 1.45 }).leadIn.length).toBeCloseTo(4.35, 9);
  expect(cutOf([plate(window)], 'window', { ...thin, kerf: 1.2 }).leadIn.length).toBeCloseTo(4, 9);
});

test('a window is entered square in the middle of its longer, front edge', () => {
  const cut = cutOf([plate(opening('window', rectangle(40, 30, 'opening', 30, 15)))], 'window');
  expect(cut.path[0]?.x).toBeCloseTo(50, 9);
  expect(cut.path[0]?.y).toBeCloseTo(15.8, 9);
  expect(cut.leadIn.pierce.x).toBeCloseTo(50, 9);
  expect(cut.leadIn.pierce.y).toBeCloseTo(21.8, 9);
});

test('in a slot of 11 the lead-in is shortened until the pierce is as far from the far edge: 5', () => {
  // 6 leaves 11 - 0.8 - 6 = 4.2 to the far edge, less than 6; 5.5 leaves 4.7; 5 leaves 5.2, which is enough.
  const { value, findings } = planCuts([plate(opening('slot', slot(40, 11, 50, 30)))], settings);
  expect(value.contours[0]?.leadIn.length).toBeCloseTo(5, 9);
  const note = findings.find(({ code }) => code === 'lead-in-short');
  expect(note).toMatchObject({ level: 'note', value: { amount: 5 }, limit: { amount: 6 } });
});

test('in a slot of 7 there is no room across, so it is entered along its length, at the left end', () => {
  const cut = cutOf([plate(opening('slot', slot(40, 7, 50, 30)))], 'slot');
  expect(cut.path[0]?.x).toBeCloseTo(50 - 20 + 0.8, 9);
  expect(cut.path[0]?.y).toBeCloseTo(30, 9);
  expect(cut.leadIn.pierce.y).toBeCloseTo(30, 9);
});

test('a slot of 6.3 has no room for a pierce anywhere: stop', () => {
  const { findings } = planCuts([plate(opening('slot', slot(40, 6.3, 50, 30)))], settings);
  expect(findings[0]).toMatchObject({
    code: 'lead-in-no-room',
    level: 'stop',
    subject: { featureId: 'slot' },
  });
});

test('a bearing edge is left alone: the window starts on its back edge instead', () => {
  // Opening clockwise from (30, 15): up the left side, along the back, down the right side, along the front.
  const window = rectangle(40, 30, 'opening', 30, 15);
  const front = window.findIndex((v, i) => v.y === 15 && window[(i + 1) % 4]?.y === 15);
  const cut = cutOf([plate(opening('window', window, [{ segment: front, role: 'bearing' }]))], 'window');
  expect(cut.path[0]?.y).toBeCloseTo(45 - 0.8, 9);
});

test('the same mirrored: the bearing edge is known by its segment, not by its place in the list', () => {
  const window = rectangle(40, 30, 'opening', 30, 15);
  const front = window.findIndex((v, i) => v.y === 15 && window[(i + 1) % 4]?.y === 15);
  const part = partOf('plate', [
    outline(rectangle(100, 60)),
    opening('window', window, [{ segment: front, role: 'bearing' }]),
  ]);
  const cut = cutOf([place(part, { mirrored: true, turnDegrees: 180 })], 'window');
  // Mirrored and turned by 180 degrees, (x, y) lies at (x, -y): front at -15, back at -45.
  expect(cut.path[0]?.y).toBeCloseTo(-45 + 0.8, 9);
});

test('where every edge is a bearing edge it starts there all the same, with a caution', () => {
  const window = rectangle(40, 30, 'opening', 30, 15);
  const edges = [0, 1, 2, 3].map((segment) => ({ segment, role: 'bearing' as const }));
  const { value, findings } = planCuts([plate(opening('window', window, edges))], settings);
  expect(value.contours[0]?.featureId).toBe('window');
  expect(findings.find(({ code }) => code === 'lead-in-on-kept-edge')).toMatchObject({ level: 'caution' });
});

test('a corner beside a bend edge is no place to start: the rectangle starts at the back left', () => {
  const contour = rectangle(100, 60);
  const front = contour.findIndex((v, i) => v.y === 0 && contour[(i + 1) % 4]?.y === 0);
  const part = partOf('plate', [outline(contour, [{ segment: front, role: 'bend' }])]);
  const cut = cutOf([place(part)], 'outline');
  expect(cut.path[0]?.x).toBeCloseTo(-0.5657, 4);
  expect(cut.path[0]?.y).toBeCloseTo(60.5657, 4);
});

test('an outline starts at a convex corner, never in the inside corner of an angle', () => {
  const ell = polygonContour(
    [
      { x: 0, y: 20 },
      { x: 60, y: 20 },
      { x: 60, y: 0 },
      { x: 100, y: 0 },
      { x: 100, y: 80 },
      { x: 0, y: 80 },
    ],
    { direction: 'outline' },
  );
  const cut = cutOf([place(partOf('angle', [outline(ell)]))], 'outline');
  expect(cut.path[0]?.x).toBeCloseTo(60 - 0.5657, 4);
  expect(cut.path[0]?.y).toBeCloseTo(-0.5657, 4);
});

const quarter = Math.SQRT2 - 1;
const rounded = makeContour(
  [
    { x: 10, y: 0, bulge: 0 },
    { x: 90, y: 0, bulge: quarter },
    { x: 100, y: 10, bulge: 0 },
    { x: 100, y: 50, bulge: quarter },
    { x: 90, y: 60, bulge: 0 },
    { x: 10, y: 60, bulge: quarter },
    { x: 0, y: 50, bulge: 0 },
    { x: 0, y: 10, bulge: quarter },
  ],
  { direction: 'outline' },
);

test('without a sharp corner an outline starts in the middle of its longest straight, the front one of two', () => {
  const cut = cutOf([place(partOf('rounded', [outline(rounded)]))], 'outline');
  expect(cut.path[0]?.x).toBeCloseTo(50, 9);
  expect(cut.path[0]?.y).toBeCloseTo(-0.8, 9);
});

test('an edge to be welded is better still, though it is shorter: the start is under the weld', () => {
  const part = partOf('rounded', [outline(rounded, [{ segment: 2, role: 'weld' }])]);
  const cut = cutOf([place(part)], 'outline');
  expect(cut.path[0]?.x).toBeCloseTo(100.8, 9);
  expect(cut.path[0]?.y).toBeCloseTo(30, 9);
});

test('an outline of arcs alone, three lobes of 20 and hollows between, starts in the middle of the front lobe', () => {
  // Lobe middles 50 from the centre at -90, 30 and 150 degrees, hollow middles 120 from it between them: sqrt 10900 =
  // 104.403 apart, so hollows of 84.403 touch the lobes smoothly.
  const APART = Math.sqrt(10900);
  const lobes = [-90, 30, 150].map((degrees) => (degrees * Math.PI) / 180);
  const vertices = lobes.flatMap((angle) => {
    const middle = { x: 50 * Math.cos(angle), y: 50 * Math.sin(angle) };
    return [-1, 1].map((side) => {
      const hollow = {
        x: 120 * Math.cos(angle + (side * Math.PI) / 3),
        y: 120 * Math.sin(angle + (side * Math.PI) / 3),
      };
      // Where the two circles touch: 20 from the lobe's middle towards the hollow's.
      return {
        x: middle.x + ((hollow.x - middle.x) * 20) / APART,
        y: middle.y + ((hollow.y - middle.y) * 20) / APART,
      };
    });
  });
  const bulgeOf = (radius: number, chord: number): number => Math.tan(Math.asin(chord / (2 * radius)) / 2);
  const contour = makeContour(
    vertices.map(({ x, y }, index) => {
      const next = vertices[(index + 1) % 6] ?? { x, y };
      const chord = Math.hypot(next.x - x, next.y - y);
      return { x, y, bulge: index % 2 === 0 ? bulgeOf(20, chord) : -bulgeOf(APART - 20, chord) };
    }),
    { direction: 'outline' },
  );
  const cut = cutOf([place(partOf('lobed', [outline(contour)]))], 'outline');
  expect(cut.path[0]?.x).toBeCloseTo(0, 6);
  expect(cut.path[0]?.y).toBeCloseTo(-70.8, 6);
});

test('a neighbour 8.4 away in front: the slant is shortened until the pierce clears it by 4.2', () => {
  const neighbour = partOf('neighbour', [outline(rectangle(200, 40))]);
  const one = place(partOf('plate', [outline(circleContour({ x: 0, y: 0 }, 40, 'outline'))]));
  const other = place(neighbour, { id: 'p2', at: { x: -100, y: -40 - 8.4 - 40 } });
  const cut = cutOf([one, other], 'outline');
  // Wanted is a pierce 6 below the edge, which is 2.4 from the neighbour. In steps of 0.5: 4.5 leaves 3.9, 4 leaves 4.4.
  expect(cut.path[0]?.y).toBeCloseTo(-40.8, 9);
  expect(-40 - cut.leadIn.pierce.y).toBeCloseTo(4, 6);
});

test('a ring inside a ring: the pierce of the inner outline stays off both', () => {
  const washer = partOf('washer', [outline(circleContour({ x: 0, y: 0 }, 18, 'outline'))]);
  const { value, findings } = planCuts([place(washer), place(ring, { id: 'p2' })], settings);
  expect(findings.filter(({ level }) => level === 'stop')).toEqual([]);
  const inner = value.contours[0];
  const radius = Math.hypot(inner?.leadIn.pierce.x ?? 0, inner?.leadIn.pierce.y ?? 0);
  // Bore radius 28.675 less 4.2, washer radius 18 plus 3.2.
  expect(radius).toBeLessThanOrEqual(24.475 + 1e-6);
  expect(radius).toBeGreaterThanOrEqual(21.2 - 1e-6);
});

test('the bore round that washer is pierced two kerfs from the washer’s lead-in: 4.5 from its path instead of 5.5', () => {
  const washer = partOf('washer', [outline(circleContour({ x: 0, y: 0 }, 18, 'outline'))]);
  const { contours } = planCuts([place(washer), place(ring, { id: 'p2' })], settings).value;
  const [inner, bore] = contours;
  expect(bore?.featureId).toBe('bore');
  const pierce = bore?.leadIn.pierce ?? { x: 0, y: 0 };
  const earlier = sample([...(inner?.leadIn.path.vertices ?? []), ...(inner?.path ?? [])], false, 0.01);
  expect(Math.min(...earlier.map(({ x, y }) => Math.hypot(x - pierce.x, y - pierce.y)))).toBeGreaterThan(
    3.2 - 1e-3,
  );
  // The washer's lead-in slants at 45° up to (0, -18.8). A pierce at (0, -27.875 + s) is (9.075 - s) sin 45° beside it:
  // 2.53 for 5.5, 2.88 for 5, 3.23 for 4.5. 6 would come nearer to the washer than 4.2.
  expect(bore?.leadIn.length).toBeCloseTo(4.5, 9);
});

test('a lead-in does not run through an earlier pierce: in 16 mm plate it is 6 long where 16 was wanted', () => {
  const thick = { ...settings, thickness: 16 };
  // A disc of 40 whose pierce lands at (0, -50): 20.8 and 15.2 below and 15.2 right of its middle, (16 - 0.8) each way.
  const disc = partOf('disc', [outline(circleContour({ x: 0, y: 0 }, 20, 'outline'))]);
  const frame = partOf('frame', [
    outline(circleContour({ x: 0, y: 0 }, 90, 'outline')),
    hole('window', 0, 0, 120),
  ]);
  const placed = [place(disc, { at: { x: -15.2, y: -14 } }), place(frame, { id: 'p2' })];
  const [first, window] = planCuts(placed, thick).value.contours;
  expect(first?.leadIn.pierce.x).toBeCloseTo(0, 9);
  expect(first?.leadIn.pierce.y).toBeCloseTo(-50, 9);
  // The window starts at (0, -59.2). From 16 above that the lead-in would go right through (0, -50); the pierce is two
  // kerfs below that at (0, -53.2).
  expect(window?.path[0]?.x).toBeCloseTo(0, 9);
  expect(window?.leadIn.length).toBeCloseTo(6, 9);
});

test('parts 3 mm apart all round leave no room: stop, and the outline is not in the plan', () => {
  const washer = partOf('washer', [outline(circleContour({ x: 0, y: 0 }, 25.675, 'outline'))]);
  const { value, findings } = planCuts([place(washer), place(ring, { id: 'p2' })], settings);
  expect(value.contours.some(({ placementId }) => placementId === 'p1')).toBe(false);
  const stops = findings.filter(({ level }) => level === 'stop');
  expect(stops.map(({ subject }) => subject.placementId)).toEqual(['p1', 'p2']);
  expect(stops[0]?.says).toContain('in the metal of a part');
});

test('every contour closes on the point where its lead-in ends, to the last digit', () => {
  const part = partOf('plate', [
    outline(rectangle(100, 60)),
    hole('hole', 80, 30, 11),
    opening('slot', slot(40, 11, 35, 30)),
  ]);
  const { contours } = planCuts([place(part, { turnDegrees: 33, at: { x: 7, y: 11 } })], settings).value;
  expect(contours).toHaveLength(3);
  for (const { path, leadIn } of contours) {
    const end = leadIn.path.vertices.at(-1);
    expect([end?.x, end?.y]).toEqual([path[0]?.x, path[0]?.y]);
    expect([leadIn.path.vertices[0]?.x, leadIn.path.vertices[0]?.y]).toEqual([
      leadIn.pierce.x,
      leadIn.pierce.y,
    ]);
  }
});
