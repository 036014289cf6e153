// Boxes, segments, arcs and discs that touch or do not; every case can be checked with a ruler.
import { describe, expect, test } from 'vitest';
import {
  boxesOverlap,
  boxOfCorners,
  cornersOf,
  discHitsBox,
  makeBox,
  segmentHitsBox,
  segmentsCross,
  uprightBox,
} from '../../parts-library/drawing/boxes.js';
import { boundsOfPiece, pieceHitsBox, piecesOf } from '../../parts-library/drawing/pieces.js';

const diagonal = Math.SQRT1_2;
const square = uprightBox(0, 0, 10, 10);

describe('boxes', () => {
  test('two upright boxes overlap only when they share area', () => {
    expect(boxesOverlap(square, uprightBox(9, 9, 20, 20))).toBe(true);
    expect(boxesOverlap(square, uprightBox(10, 0, 20, 10))).toBe(false);
  });

  test('a diamond whose upright bounds overlap a square need not touch it', () => {
    // Corners 14.14 from the centre (18, 18): its nearest edge is 10 away along the diagonal, the square's corner 11.3.
    const diamond = makeBox(18, 18, 10, 10, diagonal, diagonal);
    expect(diamond.minX).toBeLessThan(10);
    expect(boxesOverlap(square, diamond)).toBe(false);
    expect(boxesOverlap(square, makeBox(16, 16, 10, 10, diagonal, diagonal))).toBe(true);
  });

  test('corners and back give the same box', () => {
    const box = makeBox(3, 4, 5, 2, diagonal, -diagonal);
    const again = boxOfCorners(cornersOf(box));
    expect(again.x).toBeCloseTo(3, 9);
    expect(again.halfWidth).toBeCloseTo(5, 9);
    expect(again.uy).toBeCloseTo(-diagonal, 9);
  });
});

describe('segments', () => {
  test('a segment through a box hits it, one along its edge does not', () => {
    expect(segmentHitsBox(square, -5, 5, 15, 5)).toBe(true);
    expect(segmentHitsBox(square, -5, 10, 15, 10)).toBe(false);
    expect(segmentHitsBox(square, -5, 5, -1, 5)).toBe(false);
    expect(segmentHitsBox(square, 4, 4, 6, 6)).toBe(true);
  });

  test('a segment past the corner of a turned box misses it', () => {
    const diamond = makeBox(0, 0, 10, 10, diagonal, diagonal);
    expect(segmentHitsBox(diamond, 10, 5, 5, 10)).toBe(false);
    expect(segmentHitsBox(diamond, 8, 5, 5, 8)).toBe(true);
  });

  test('crossing segments', () => {
    expect(segmentsCross(0, 0, 10, 10, 0, 10, 10, 0)).toBe(true);
    expect(segmentsCross(0, 0, 4, 4, 0, 10, 10, 0)).toBe(false);
  });
});

describe('arcs', () => {
  // From (0, 0) over the top to (20, 0): centre (10, 0), radius 10; y points down.
  const [arch] = piecesOf([
    ['M', 0, 0],
    ['A', 10, 0, 1, 20, 0],
  ]);

  test('an arc command has the centre and the side that SVG gives it', () => {
    expect(arch).toMatchObject({ kind: 'arc', radius: 10 });
    if (arch?.kind !== 'arc') throw new Error('not an arc');
    expect(arch.x).toBeCloseTo(10, 9);
    expect(arch.y).toBeCloseTo(0, 9);
    expect(boundsOfPiece(arch).minY).toBeCloseTo(-10, 9);
    expect(boundsOfPiece(arch).maxY).toBeCloseTo(0, 9);
  });

  test('the large arc of the same ends bulges the long way round', () => {
    const [large] = piecesOf([
      ['M', 10, 0],
      ['A', 10, 1, 1, 0, -10],
    ]);
    if (large?.kind !== 'arc') throw new Error('not an arc');
    expect(Math.abs(large.sweep)).toBeCloseTo((3 * Math.PI) / 2, 9);
    expect(large.x).toBeCloseTo(0, 9);
    expect(large.y).toBeCloseTo(0, 9);
  });

  test('a box inside the arch is clear of it, one across its crown is not', () => {
    if (arch === undefined) throw new Error('no arc');
    expect(pieceHitsBox(arch, uprightBox(5, -6, 15, -1))).toBe(false);
    expect(pieceHitsBox(arch, uprightBox(8, -12, 12, -9))).toBe(true);
    expect(pieceHitsBox(arch, uprightBox(8, 9, 12, 12))).toBe(false);
  });

  test('a box that swallows the end of an arc hits it', () => {
    if (arch === undefined) throw new Error('no arc');
    expect(pieceHitsBox(arch, uprightBox(-1, -1, 1, 1))).toBe(true);
  });

  test('a turned box is tested in its own frame', () => {
    if (arch === undefined) throw new Error('no arc');
    expect(pieceHitsBox(arch, makeBox(10, -10, 4, 1, diagonal, diagonal))).toBe(true);
    expect(pieceHitsBox(arch, makeBox(10, -4, 4, 1, diagonal, diagonal))).toBe(false);
  });
});

describe('discs', () => {
  test('a disc beside a corner touches it only within its radius', () => {
    expect(discHitsBox(square, 13, 14, 5.1)).toBe(true);
    expect(discHitsBox(square, 13, 14, 4.9)).toBe(false);
    expect(discHitsBox(square, 5, 5, 1)).toBe(true);
  });
});
