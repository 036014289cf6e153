import { describe, expect, test } from 'vitest';
import {
  boltEnvelope,
  boltHead,
  clearanceHole,
  countersinkDepth,
  listDrills,
  listThreads,
  nearestDrill,
  sourceOf,
} from '../../parts-library/handbook/index.js';
import { inch, row, thread } from './rows.js';

describe('clearance holes', () => {
  // ISO 273, public reprint.
  test.each([
    ['M8', 8.4, 9, 10],
    ['M10', 10.5, 11, 12],
    ['M12', 13, 13.5, 14.5],
    ['M16', 17, 17.5, 18.5],
  ])('%s passes %d, %d, %d', (name, close, normal, loose) => {
    const bolt = thread(name);
    expect(row(clearanceHole(bolt, 'close')).diameter).toBe(close);
    expect(row(clearanceHole(bolt, 'normal')).diameter).toBe(normal);
    expect(row(clearanceHole(bolt, 'loose')).diameter).toBe(loose);
  });

  // ASME B18.2.8, Machinery's Handbook 31st ed. p. 1741: 3/8 normal 13/32, 1/2 normal 9/16, 1/2 close 17/32.
  test('inch bolts pass their drills', () => {
    expect(row(clearanceHole(thread('3/8-16'), 'normal'))).toMatchObject({
      drill: '13/32',
      toleranceClass: 'H13',
    });
    expect(row(clearanceHole(thread('3/8-16'), 'normal')).diameter).toBeCloseTo(inch(0.40625), 6);
    expect(row(clearanceHole(thread('1/2-13'), 'close')).diameter).toBeCloseTo(inch(0.53125), 6);
    expect(row(clearanceHole(thread('1/2-13'), 'normal')).diameter).toBeCloseTo(inch(0.5625), 6);
  });

  test('a fine thread has the hole of its size', () => {
    expect(row(clearanceHole(thread('M10x1.25'), 'normal')).diameter).toBe(11);
  });

  test('9/16 has none in the standard and says so', () => {
    const answer = clearanceHole(thread('9/16-12'), 'normal');
    expect(answer.found).toBe(false);
    if (!answer.found) expect(answer.known).toContain('5/8');
  });

  test('fits widen from close to loose in every row', () => {
    for (const bolt of listThreads().filter(({ size }) => size !== '9/16')) {
      const [close, normal, loose] = (['close', 'normal', 'loose'] as const).map(
        (fit) => row(clearanceHole(bolt, fit)).diameter,
      );
      expect(close, bolt.name).toBeGreaterThan(bolt.diameter);
      expect(normal, bolt.name).toBeGreaterThan(close ?? Infinity);
      expect(loose, bolt.name).toBeGreaterThan(normal ?? Infinity);
    }
  });
});

describe('heads, washers and sockets', () => {
  // ISO 4014, ISO 7089: M10 16 across flats, washer 20; corners 1.1547 AF; socket 1.3 AF + 2 from memory.
  test('an M10 takes 16 across flats, 18.48 across corners, a 20 washer and a 22.8 socket', () => {
    const room = row(boltEnvelope(thread('M10')));
    expect(room.acrossFlats.value).toBe(16);
    expect(room.acrossCorners.value).toBeCloseTo(18.475, 3);
    expect(room.washerOutside.value).toBe(20);
    expect(room.socketOutside.value).toBeCloseTo(22.8, 9);
    expect(room.acrossFlats.source.certainty).toBe('published');
    expect(room.socketOutside.source.certainty).toBe('from memory');
  });

  // ASME B18.2.1/B18.2.2 charts in public: 7/16 cap screw 5/8, nut 11/16; the nut decides.
  test('on 7/16 the nut is larger than the head', () => {
    const head = row(boltHead(thread('7/16-14')));
    expect(head.headAcrossFlats).toBeCloseTo(inch(0.625), 6);
    expect(head.nutAcrossFlats).toBeCloseTo(inch(0.6875), 6);
    expect(row(boltEnvelope(thread('7/16-14'))).acrossFlats.value).toBeCloseTo(inch(0.6875), 6);
  });

  test('older M10 bolts are 17 across flats, M8 the same as ever', () => {
    expect(row(boltHead(thread('M10'))).olderAcrossFlats).toBe(17);
    expect(row(boltHead(thread('M8'))).olderAcrossFlats).toBeUndefined();
  });

  test('a #10 cap screw is not made; its nut is 3/8', () => {
    const head = row(boltHead(thread('#10-32')));
    expect(head.headAcrossFlats).toBeUndefined();
    expect(head.nutAcrossFlats).toBeCloseTo(9.525, 6);
  });

  test('head heights are remembered and say so', () => {
    const head = row(boltHead(thread('M10')));
    expect(head.headHeight).toBe(6.4);
    expect(sourceOf(head, 'headHeight').certainty).toBe('from memory');
  });

  test('every thread has an envelope', () => {
    for (const bolt of listThreads()) expect(boltEnvelope(bolt).found, bolt.name).toBe(true);
  });

  // (dk − d)/2 for a right-angled cone.
  test('a 90° head of 20 on a 10 bolt is 5 deep', () => {
    expect(countersinkDepth(20, 10, 90)).toBeCloseTo(5, 9);
  });
});

describe('drills', () => {
  // ASME B94.11M sizes as printed in tap-drill charts, inches.
  test.each([
    ['#29', 0.136],
    ['#7', 0.201],
    ['F', 0.257],
    ['U', 0.368],
    ['Q', 0.332],
    ['B', 0.238],
    ['13/32', 0.40625],
    ['27/64', 0.421875],
    ['1/2', 0.5],
    ['1', 1],
  ])('%s is %d in', (name, size) => {
    expect(listDrills().find((drill) => drill.name === name)?.diameter).toBeCloseTo(inch(size), 5);
  });

  test('6.78 is drilled 6.8', () => {
    expect(nearestDrill(6.78)?.name).toBe('6.8 mm');
  });

  test('drills are in order and each name is used once', () => {
    const drills = listDrills();
    expect(new Set(drills.map(({ name }) => name)).size).toBe(drills.length);
    for (const [index, drill] of drills.entries()) {
      expect(drill.diameter).toBeGreaterThanOrEqual(drills[index - 1]?.diameter ?? 0);
    }
  });

  test('with no drills there is none to choose', () => {
    expect(nearestDrill(5, [])).toBeUndefined();
  });
});
