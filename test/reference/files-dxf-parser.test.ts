// DXF files read back by an independent reader (npm dxf-parser): shapes, layers, order, units, areas.
import Parser from 'dxf-parser';
import type { ICircleEntity, IEntity, ILwpolylineEntity, IPointEntity, IPolylineEntity } from 'dxf-parser';
import { expect, test } from 'vitest';
import { netArea } from '../../parts-library/cutting/index.js';
import { areaByHand, bracket, bracketPlan, everyDxf } from '../files/pieces.js';

const isRun = (entity: IEntity): entity is IPolylineEntity | ILwpolylineEntity =>
  entity.type === 'POLYLINE' || entity.type === 'LWPOLYLINE';
const isCircle = (entity: IEntity): entity is ICircleEntity => entity.type === 'CIRCLE';
const isPoint = (entity: IEntity): entity is IPointEntity => entity.type === 'POINT';

function read(text: string) {
  const dxf = new Parser().parseSync(text);
  if (dxf === null) throw new Error('dxf-parser read nothing');
  return dxf;
}

/** Corners of a run in mm, bulge 0 where the reader gives none. */
const cornersOf = (entity: IEntity, scale: number) =>
  isRun(entity)
    ? entity.vertices.map(({ x, y, bulge }) => ({
        x: x * scale,
        y: y * scale,
        bulge: Number.isFinite(bulge) ? bulge : 0,
      }))
    : [];

const scaleOf = (unit: 'mm' | 'in'): number => (unit === 'mm' ? 1 : 25.4);

const files = everyDxf.map((written) => ({ ...written, dxf: read(written.file.text) }));
const finished = files.filter(({ file }) => file.kind === 'finished');
const cut = files.filter(({ file }) => file.kind === 'cut');

test.each(files)('$label: version, unit and measurement', ({ dxf, version, unit }) => {
  expect(dxf.header['$ACADVER']).toBe(version === 'R12' ? 'AC1009' : 'AC1015');
  expect(dxf.header['$INSUNITS']).toBe(unit === 'mm' ? 4 : 1);
  expect(dxf.header['$MEASUREMENT']).toBe(unit === 'mm' ? 1 : 0);
});

test.each(files)(
  '$label: the layer table declares every layer, and nothing else is used',
  ({ dxf, file }) => {
    const kind = file.kind === 'finished' ? 'finished' : 'cutpath';
    const names = ['outline', 'opening', 'score', 'etch', 'mark'].map((operation) => `${kind}-${operation}`);
    expect(Object.keys(dxf.tables.layer.layers).sort()).toEqual(['0', ...names].sort());
    expect(dxf.entities.map(({ layer }) => layer)).toEqual([
      `${kind}-score`,
      `${kind}-etch`,
      `${kind}-mark`,
      `${kind}-opening`,
      `${kind}-opening`,
      `${kind}-opening`,
      `${kind}-outline`,
    ]);
  },
);

test.each(finished)(
  '$label: circles are circles, 11 across, in the order of their names',
  ({ dxf, unit }) => {
    const scale = scaleOf(unit);
    const circles = dxf.entities.filter(isCircle);
    expect(circles.map(({ center }) => Math.round(center.x * scale))).toEqual([20, 100]);
    for (const { center, radius } of circles) {
      expect(Math.abs(radius * scale - 5.5)).toBeLessThanOrEqual(1e-6);
      expect(Math.abs(center.y * scale - 60)).toBeLessThanOrEqual(1e-6);
    }
  },
);

test.each(finished)(
  '$label: the outline is closed, keeps its bulges and encloses what it should',
  ({ dxf, unit }) => {
    const last = dxf.entities.at(-1);
    if (last === undefined || !isRun(last)) throw new Error('no outline');
    expect(last.shape).toBe(true);
    const corners = cornersOf(last, scaleOf(unit));
    expect(corners.map(({ bulge }) => bulge)).toEqual([
      0, 0.414213562, 0, 0.414213562, 0, -1, 0, 0.414213562, 0, 0.414213562,
    ]);
    // 120 x 80 less the corners' 4 (100 - 25 pi) = 85.8407 less half a disc of radius 15 = 353.4292: 9160.7301.
    // A coordinate rounded by half a unit of its last decimal moves an edge of 400 mm by less than 2e-4 mm2.
    expect(Math.abs(areaByHand(corners) - 9160.7301)).toBeLessThan(3e-4);
  },
);

test.each(finished)('$label: outline less openings is the part’s net area', ({ dxf, unit }) => {
  const scale = scaleOf(unit);
  const total = dxf.entities.reduce((sum, entity) => {
    if (isCircle(entity)) return sum - Math.PI * (entity.radius * scale) ** 2;
    return isRun(entity) && entity.shape ? sum + areaByHand(cornersOf(entity, scale)) : sum;
  }, 0);
  expect(Math.abs(total - netArea(bracket))).toBeLessThan(3e-4);
});

test.each(finished)('$label: every vertex within 1e-6 mm of the part’s', ({ dxf, unit }) => {
  const drawn = bracket.features.find(({ id }) => id === 'slot');
  const entity = dxf.entities.find((each) => isRun(each) && each.shape && each.layer === 'finished-opening');
  if (drawn?.purpose !== 'opening' || entity === undefined) throw new Error('no slot');
  const corners = cornersOf(entity, scaleOf(unit));
  expect(corners).toHaveLength(drawn.contour.length);
  corners.forEach((corner, index) => {
    expect(Math.abs(corner.x - (drawn.contour[index]?.x ?? NaN))).toBeLessThanOrEqual(1e-6);
    expect(Math.abs(corner.y - (drawn.contour[index]?.y ?? NaN))).toBeLessThanOrEqual(1e-6);
  });
});

test.each(files)('$label: the centre mark is a point, and no line crosses it', ({ dxf, unit }) => {
  const points = dxf.entities.filter(isPoint);
  expect(points).toHaveLength(1);
  expect(Number(points[0]?.position.x) * scaleOf(unit)).toBeCloseTo(100, 6);
  expect(Number(points[0]?.position.y) * scaleOf(unit)).toBeCloseTo(20, 6);
});

test.each(cut)(
  '$label: no circle and no closed line: every run is open and starts at its pierce',
  ({ dxf, unit }) => {
    expect(dxf.entities.filter(isCircle)).toEqual([]);
    const runs = dxf.entities.filter(isRun).filter(({ layer }) => /opening|outline/.test(layer));
    expect(runs.map(({ shape }) => shape)).toEqual([false, false, false, false]);
    runs.forEach((entity, index) => {
      const [pierce] = cornersOf(entity, scaleOf(unit));
      const planned = bracketPlan.contours[index]?.leadIn.pierce;
      expect(Math.abs((pierce?.x ?? NaN) - (planned?.x ?? NaN))).toBeLessThanOrEqual(1e-6);
      expect(Math.abs((pierce?.y ?? NaN) - (planned?.y ?? NaN))).toBeLessThanOrEqual(1e-6);
    });
  },
);

test.each(cut)(
  '$label: behind the lead-in the contour closes on itself to the last digit',
  ({ dxf, unit }) => {
    for (const entity of dxf.entities.filter(isRun).filter(({ layer }) => /opening|outline/.test(layer))) {
      const [, start, ...rest] = cornersOf(entity, scaleOf(unit));
      expect([rest.at(-1)?.x, rest.at(-1)?.y]).toEqual([start?.x, start?.y]);
    }
  },
);

test.each(cut)(
  '$label: holes of 11 enclose pi x 4.7², counter-clockwise; the outline runs clockwise',
  ({ dxf, unit }) => {
    const contours = dxf.entities
      .filter(isRun)
      .filter(({ layer }) => /opening|outline/.test(layer))
      .map((entity) => areaByHand(cornersOf(entity, scaleOf(unit)).slice(1, -1)));
    // pi x 4.7^2 = 69.3978.
    expect(contours[0]).toBeCloseTo(69.3978, 4);
    expect(contours[1]).toBeCloseTo(69.3978, 4);
    // The slot, 40 x 14 less a kerf of 1.6 each way: 26 x 12.4 + pi x 6.2^2 = 443.1628.
    expect(contours[2]).toBeCloseTo(443.1628, 3);
    expect(contours[3]).toBeLessThan(0);
    // Grown by 0.8 all round: 121.6 x 81.6 less corners of 10.8 (4 - pi) x 10.8^2 = 100.1246, less the hollow. That has its
    // radius shrunk to 14.2 about (60, 80) and its two sharp corners rounded with 0.8, tangent to the top edge at y = 80.8.
    // Half disc of 14.2: 316.7354. Above y = 80, up to 80.8: between the corner circles about (45, 80) and (75, 80), a strip
    // of 30 x 0.8 less two quarters of 0.8^2 pi / 4: 24 - 1.0053 = 22.9947. Together 339.7301.
    expect(Math.abs((contours[3] ?? 0) + (121.6 * 81.6 - 100.1246 - 339.7301))).toBeLessThan(3e-4);
  },
);

test.each(files)('$label: the extents in the header hold everything', ({ dxf, unit, file }) => {
  const scale = scaleOf(unit);
  const corner = (name: string) => {
    const value = dxf.header[name];
    if (typeof value !== 'object') throw new Error(`${name} is missing`);
    return [value.x * scale, value.y * scale];
  };
  const [low, high] = [corner('$EXTMIN'), corner('$EXTMAX')];
  if (file.kind === 'finished') {
    expect(low.map((v) => Number(v.toFixed(6)))).toEqual([0, 0]);
    expect(high.map((v) => Number(v.toFixed(6)))).toEqual([120, 80]);
  } else {
    // Kerf all round; the outline starts at its only sharp corners, those of the hollow, from above.
    expect(low[0]).toBeCloseTo(-0.8, 6);
    expect(high[0]).toBeCloseTo(120.8, 6);
    expect(low[1]).toBeCloseTo(-0.8, 6);
    expect(high[1]).toBeCloseTo(bracketPlan.contours.at(-1)?.leadIn.pierce.y ?? 0, 6);
  }
});
