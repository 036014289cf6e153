// Kerf offsets of named shapes: how many lines and arcs come out is counted by hand, and every one of them is walked
// against an independent distance field.
import { describe, expect, test } from 'vitest';
import {
  areaOf,
  circleContour,
  lengthOf,
  makeContour,
  offsetContour,
  type Contour,
  type OffsetOptions,
} from '../../parts-library/geometry/index.js';
import { createField, distanceToPiece, middleOf, piecesOf, walk } from './support/field.js';
import {
  chambers,
  dogbone,
  filletedL,
  needle,
  notched,
  pedalArm,
  plate,
  ringWithHoles,
  roundedOpening,
  roundedPlate,
  slot,
  sprocket52,
  star,
} from './support/shapes.js';

interface Case {
  readonly shape: string;
  readonly contours: readonly Contour[];
  readonly distance: number;
  /** Segments that come out, over all contours. */
  readonly segments: number;
  /** Contours that come out. */
  readonly pieces: number;
  /** Why that many. */
  readonly because: string;
  readonly options?: OffsetOptions;
}

const origin = { x: 0, y: 0 };

/** Counted by hand from the drawing of each shape. */
const cases: readonly Case[] = [
  {
    shape: 'circle of 50 grown by 0.75',
    contours: [circleContour(origin, 25, 'outline')],
    distance: 0.75,
    segments: 2,
    pieces: 1,
    because: 'a circle stays a circle of two half turns',
  },
  {
    shape: 'ring with six holes',
    contours: ringWithHoles(),
    distance: 0.75,
    segments: 16,
    pieces: 8,
    because: 'eight circles of two half turns',
  },
  {
    shape: 'rounded rectangle, grown',
    contours: [roundedPlate(10)],
    distance: 0.75,
    segments: 8,
    pieces: 1,
    because: 'four sides and four corner arcs, all tangent, none lost',
  },
  {
    shape: 'rounded rectangle, shrunk',
    contours: [roundedPlate(10)],
    distance: -0.75,
    segments: 8,
    pieces: 1,
    because: 'the corner arcs of 10 keep 9.25',
  },
  {
    shape: 'plate with a slot',
    contours: [plate(), slot(30, 4, 50, 30)],
    distance: 0.75,
    segments: 12,
    pieces: 2,
    because: 'four sides and four rounded corners; the slot keeps two sides and two ends',
  },
  {
    shape: 'pedal arm',
    contours: pedalArm(),
    distance: 0.75,
    segments: 9,
    pieces: 3,
    because: 'two sides, the small end, the large end over half a turn in two; two holes of two',
  },
  {
    shape: 'sprocket of 52 teeth, grown',
    contours: [sprocket52()],
    distance: 0.75,
    segments: 312,
    pieces: 1,
    because: 'four arcs per tooth (208) and a rounded corner on both sides of each tip (104)',
  },
  {
    shape: 'sprocket of 52 teeth, shrunk',
    contours: [sprocket52()],
    distance: -0.75,
    segments: 208,
    pieces: 1,
    because: 'four arcs per tooth: shrinking closes the corners at the tips',
  },
  {
    shape: 'notch of 3, offset 1.6',
    contours: [notched()],
    distance: 1.6,
    segments: 11,
    pieces: 1,
    because: 'the notch closes: bottom, two sides, two tops, four outer corners and two at the mouth',
  },
  {
    shape: 'notch of 3, offset exactly 1.5',
    contours: [notched()],
    distance: 1.5,
    segments: 11,
    pieces: 1,
    because: 'the walls meet and leave nothing between them; the two mouth corners touch in a cusp',
  },
  {
    shape: 'slot of half width 1.5 in a plate, offset 1.6',
    contours: [plate(), slot(30, 1.5, 50, 30)],
    distance: 1.6,
    segments: 8,
    pieces: 1,
    because: 'the slot vanishes; four sides and four rounded corners remain',
  },
  {
    shape: 'plate with a dogbone opening, offset 1.2',
    contours: [plate(), dogbone()],
    distance: 1.2,
    segments: 16,
    pieces: 3,
    because: 'the neck of 2 closes: each lobe keeps its two arcs and gets two at the mouth; the plate has 8',
  },
  {
    shape: 'opening of two chambers joined by a channel exactly twice the offset wide',
    contours: [chambers()],
    distance: 1.5,
    segments: 14,
    pieces: 2,
    because:
      'the channel leaves nothing; each chamber keeps five straight sides and two arcs that meet in a cusp',
  },
  {
    shape: 'opening of two chambers, the offset exactly half their width',
    contours: [chambers()],
    distance: 5,
    segments: 0,
    pieces: 0,
    because: 'chambers of 10 x 10 shrink to points',
  },
  {
    shape: 'star of seven 12 degree points, grown',
    contours: [star()],
    distance: 0.75,
    segments: 21,
    pieces: 1,
    because: 'fourteen sides and seven rounded tips; inner corners close',
  },
  {
    shape: 'star of seven 12 degree points, mitred to 10 times',
    contours: [star()],
    distance: 0.75,
    segments: 14,
    pieces: 1,
    because: 'a 12 degree tip reaches 1 / sin 6 = 9.57 times the distance, within the limit',
    options: { join: 'mitre', mitreLimit: 10 },
  },
  {
    shape: 'star of seven 12 degree points, mitred to 4 times',
    contours: [star()],
    distance: 0.75,
    segments: 21,
    pieces: 1,
    because: 'a 12 degree tip would reach 9.57 times the distance, so all seven are rounded',
    options: { join: 'mitre' },
  },
  {
    shape: 'triangle with an 8 degree tip, grown',
    contours: [needle()],
    distance: 0.75,
    segments: 6,
    pieces: 1,
    because: 'three sides, three rounded corners',
  },
  {
    shape: 'triangle with an 8 degree tip, mitred to 4 times',
    contours: [needle()],
    distance: 0.75,
    segments: 4,
    pieces: 1,
    because: 'the tip (14.3 times) is rounded, the corners of 86 degrees (1.47 times) are mitred',
    options: { join: 'mitre' },
  },
  {
    shape: 'fillets of 0.2, shrunk by 0.75',
    contours: [roundedPlate(0.2)],
    distance: -0.75,
    segments: 4,
    pieces: 1,
    because: 'fillets smaller than the offset become sharp',
  },
  {
    shape: 'fillets of 0.2, grown by 0.75',
    contours: [roundedPlate(0.2)],
    distance: 0.75,
    segments: 8,
    pieces: 1,
    because: 'the fillets grow to 0.95',
  },
  {
    shape: 'plate and opening both with fillets of 0.2',
    contours: [roundedPlate(0.2), roundedOpening(0.2)],
    distance: 0.75,
    segments: 12,
    pieces: 2,
    because: 'eight outside; the opening loses its fillets and keeps four sides',
  },
  {
    shape: 'fillets exactly as large as the offset, shrunk',
    contours: [roundedPlate(0.75)],
    distance: -0.75,
    segments: 4,
    pieces: 1,
    because: 'the fillets shrink to points',
  },
  {
    shape: 'fillets of 0.7501, shrunk by 0.75',
    contours: [roundedPlate(0.7501)],
    distance: -0.75,
    segments: 8,
    pieces: 1,
    because: 'arcs of radius 0.0001 remain: sharp corners would be 0.00004 off',
  },
  {
    shape: 'L with an inner fillet of 2',
    contours: [filletedL(2)],
    distance: 0.75,
    segments: 12,
    pieces: 1,
    because: 'six sides, five rounded corners, the inner fillet of 1.25',
  },
  {
    shape: 'L with an inner fillet of 0.3',
    contours: [filletedL(0.3)],
    distance: 0.75,
    segments: 11,
    pieces: 1,
    because: 'six sides, five rounded corners; the inner fillet becomes sharp',
  },
];

describe.each(cases)('$shape', ({ contours, distance, segments, pieces, options }) => {
  const results = contours.map((contour) => offsetContour(contour, distance, options));
  const out = results.flatMap((result) => result.pieces);

  test('has the lines and arcs counted by hand', () => {
    expect(out.map((piece) => piece.contour.length).reduce((a, b) => a + b, 0)).toBe(segments);
    expect(out.length).toBe(pieces);
    expect(results.every((result) => result.exact)).toBe(true);
  });

  test('lies at the distance everywhere, within 1e-6 mm', () => {
    const field = createField(contours);
    // A mitred corner is farther, by the secant of half its turn at most.
    const most =
      options?.join === 'mitre' ? Math.abs(distance) * (options.mitreLimit ?? 4) : Math.abs(distance);
    const aways = out.flatMap((piece) => walk(piece.contour, 0.1).map(field));
    expect(Math.min(...aways)).toBeGreaterThan(Math.abs(distance) - 1e-6);
    expect(Math.max(...aways)).toBeLessThan(most + 1e-6);
  });

  test('names for each line and arc the source segment it follows', () => {
    const off = results.flatMap((result, i) => {
      const source = piecesOf(contours[i] ?? []);
      return result.pieces.flatMap(({ contour, sources }) => {
        expect(sources.length).toBe(contour.length);
        return piecesOf(contour).flatMap((piece, k) => {
          const own = source[sources[k] ?? -1];
          // The middle of a line or arc is one distance from the segment it follows, also when its ends are mitred.
          return own === undefined ? [] : [distanceToPiece(own, middleOf(piece)) - Math.abs(distance)];
        });
      });
    });
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(1e-6);
  });
});

describe('areas worked by hand', () => {
  test('a 100 x 60 plate grown by 1 gains its perimeter and a disc: 6000 + 320 + pi', () => {
    const [piece] = offsetContour(plate(), 1).pieces;
    expect(piece && areaOf(piece.contour)).toBeCloseTo(6320 + Math.PI, 9);
    expect(piece && lengthOf(piece.contour)).toBeCloseTo(320 + 2 * Math.PI, 9);
  });

  test('mitred, it is 102 x 62', () => {
    const [piece] = offsetContour(plate(), 1, { join: 'mitre' }).pieces;
    expect(piece && areaOf(piece.contour)).toBeCloseTo(102 * 62, 9);
    expect(piece?.contour.length).toBe(4);
  });

  test('a slot 30 between centres and 8 wide shrinks to 6.5 wide and stays an opening', () => {
    const [piece] = offsetContour(slot(30, 4, 0, 0), 0.75).pieces;
    expect(piece && areaOf(piece.contour)).toBeCloseTo(-(30 * 6.5 + Math.PI * 3.25 ** 2), 9);
  });

  test('the closed notch of 3 keeps its rounded mouth and loses its pocket', () => {
    // Grown by 1.6 without the notch: 60 x 40 + 200 x 1.6 + pi 1.6^2, less the dip at the mouth:
    // between two arcs of 1.6 about corners 3 apart, area = 3 x 1.6 - (1.5 h + 1.6^2 asin(1.5 / 1.6)), h = sqrt(1.6^2 - 1.5^2).
    const h = Math.sqrt(1.6 ** 2 - 1.5 ** 2);
    const dip = 3 * 1.6 - (1.5 * h + 1.6 ** 2 * Math.asin(1.5 / 1.6));
    const [piece] = offsetContour(notched(), 1.6).pieces;
    expect(piece && areaOf(piece.contour)).toBeCloseTo(2400 + 320 + Math.PI * 1.6 ** 2 - dip, 9);
  });
});

describe('what an offset says', () => {
  test('an opening narrower than twice the offset vanishes, with a note', () => {
    const result = offsetContour(slot(30, 1.5, 0, 0), 1.6);
    expect(result.pieces).toEqual([]);
    expect(result.exact).toBe(true);
    expect(result.notes.join()).toMatch(/vanished/);
  });

  test('a hole of radius 0.7 vanishes under an offset of 0.75; one of 0.8 keeps 0.05', () => {
    expect(offsetContour(circleContour(origin, 0.7, 'opening'), 0.75).pieces).toEqual([]);
    const [piece] = offsetContour(circleContour(origin, 0.8, 'opening'), 0.75).pieces;
    expect(piece && areaOf(piece.contour)).toBeCloseTo(-Math.PI * 0.05 ** 2, 12);
  });

  test('an opening that comes apart says so', () => {
    expect(offsetContour(dogbone(), 1.2).notes.join()).toMatch(/apart into 2/);
  });

  test('a pocket behind a narrow mouth becomes a clockwise contour of its own', () => {
    // A keyhole: a slot 2 wide into a bore of radius 10, offset by 1.2.
    const a = Math.asin(1 / 10);
    const mouth = 30 + 10 * Math.cos(a);
    const keyhole = makeContour([
      { x: 0, y: 0, bulge: 0 },
      { x: 60, y: 0, bulge: 0 },
      { x: 60, y: 60, bulge: 0 },
      { x: 31, y: 60, bulge: 0 },
      { x: 31, y: mouth, bulge: -Math.tan((Math.PI - a) / 4) },
      { x: 30, y: 20, bulge: -Math.tan((Math.PI - a) / 4) },
      { x: 29, y: mouth, bulge: 0 },
      { x: 29, y: 60, bulge: 0 },
      { x: 0, y: 60, bulge: 0 },
    ]);
    const result = offsetContour(keyhole, 1.2);
    const areas = result.pieces.map((piece) => areaOf(piece.contour));
    expect(areas.filter((area) => area > 0).length).toBe(1);
    expect(areas.filter((area) => area < 0).length).toBe(1);
    expect(result.notes.join()).toMatch(/1 pocket was closed/);
  });

  test('a fillet no larger than the offset becomes sharp, with a note', () => {
    expect(offsetContour(roundedPlate(0.2), -0.75).notes.join()).toMatch(/4 fillets .* became sharp/);
  });

  test('no distance leaves the contour as it is', () => {
    const contour = plate();
    expect(offsetContour(contour, 0).pieces[0]?.contour).toBe(contour);
  });

  test('a distance that is no number is refused', () => {
    expect(() => offsetContour(plate(), Number.NaN)).toThrow(/finite distance/);
    expect(() => offsetContour(plate(), Infinity)).toThrow(/finite distance/);
  });
});
