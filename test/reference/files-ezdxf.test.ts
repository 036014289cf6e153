// DXF files judged by two strangers, when the machine has them: ezdxf (audit and shapes) and GDAL (ogr2ogr).
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { netArea } from '../../parts-library/cutting/index.js';
import { bracket, bracketPlan, everyDxf } from '../files/pieces.js';

const folder = mkdtempSync(join(tmpdir(), 'fishplate-dxf-'));
afterAll(() => rmSync(folder, { recursive: true }));

const files = everyDxf.map((written, index) => {
  const path = join(folder, `${index}.dxf`);
  writeFileSync(path, written.file.text);
  return { ...written, path };
});

// The system's own Python first looks where a distribution's package puts ezdxf.
const python = ['/usr/bin/python3', 'python3'].find(
  (command) => spawnSync(command, ['-c', 'import ezdxf']).status === 0,
);
const hasGdal = spawnSync('ogr2ogr', ['--version']).status === 0;
if (python === undefined) console.warn('SKIPPED: no Python with ezdxf here; the DXF audit was not run.');
if (!hasGdal) console.warn('SKIPPED: no ogr2ogr (GDAL) here; its reading of the DXF files was not run.');

/** Audits a file and tells what ezdxf made of it; areas from the centres and radii that ezdxf gives its arcs. */
const script = `
import json, math, sys, ezdxf
from ezdxf.math import bulge_to_arc
def corners(e):
    if e.dxftype() == 'LWPOLYLINE':
        return [(x, y, b) for x, y, b in e.get_points('xyb')]
    return [(v.dxf.location.x, v.dxf.location.y, v.dxf.bulge) for v in e.vertices]
def enclosed(points):
    total = 0
    for (x, y, bulge), (u, v, _) in zip(points, points[1:] + points[:1]):
        total += (x * v - u * y) / 2
        if bulge:
            _, start, end, radius = bulge_to_arc((x, y), (u, v), bulge)
            sweep = (end - start) % math.tau
            total += math.copysign(radius ** 2 / 2 * (sweep - math.sin(sweep)), bulge)
    return total
told = []
for name in sys.argv[1:]:
    doc = ezdxf.readfile(name)
    audit = doc.audit()
    things = []
    for e in doc.modelspace():
        closed = e.dxftype() == 'CIRCLE' or bool(getattr(e, 'is_closed', False))
        area = 0
        if e.dxftype() == 'CIRCLE':
            area = math.pi * e.dxf.radius ** 2
        elif e.dxftype() != 'POINT':
            area = abs(enclosed(corners(e) if closed else corners(e)[1:-1]))
        things.append([e.dxftype(), e.dxf.layer, closed, area])
    told.append(dict(version=doc.dxfversion, errors=len(audit.errors), fixes=len(audit.fixes),
        units=doc.header['$INSUNITS'], things=things,
        undeclared=[t[1] for t in things if t[1] not in doc.layers]))
print(json.dumps(told))
`;

const Told = z.array(
  z.object({
    version: z.string(),
    errors: z.number(),
    fixes: z.number(),
    units: z.number(),
    undeclared: z.array(z.string()),
    things: z.array(z.tuple([z.string(), z.string(), z.boolean(), z.number()])),
  }),
);

describe.skipIf(python === undefined)('ezdxf', () => {
  const told = () => {
    const run = spawnSync(python ?? '', ['-c', script, ...files.map(({ path }) => path)], {
      encoding: 'utf8',
    });
    if (run.status !== 0) throw new Error(run.stderr);
    return Told.parse(JSON.parse(run.stdout));
  };
  const results = python === undefined ? [] : told();

  test.each(files.map((file, index) => ({ ...file, index })))(
    '$label: no errors, nothing to fix, every layer declared',
    ({ version, unit, index }) => {
      expect(results[index]).toMatchObject({
        version: version === 'R12' ? 'AC1009' : 'AC1015',
        errors: 0,
        fixes: 0,
        units: unit === 'mm' ? 4 : 1,
        undeclared: [],
      });
    },
  );

  test.each(files.map((file, index) => ({ ...file, index })))(
    '$label: the areas it measures are those of the part or the plan',
    ({ unit, file, index }) => {
      const scale = unit === 'mm' ? 1 : 25.4 ** 2;
      const contours = (results[index]?.things ?? []).filter(([, layer]) => /opening|outline/.test(layer));
      expect(contours).toHaveLength(4);
      const [first = 0, second = 0, third = 0, outer = 0] = contours.map(([, , , area]) => area * scale);
      if (file.kind === 'finished') {
        expect(contours.every(([, , closed]) => closed)).toBe(true);
        // Half a unit of the last decimal along 600 mm of edge.
        expect(Math.abs(outer - first - second - third - netArea(bracket))).toBeLessThan(3e-4);
      } else {
        // Without the pierce in front and the closing point behind.
        expect(contours.some(([, , closed]) => closed)).toBe(false);
        expect(Math.abs(first - 69.3978)).toBeLessThan(1e-4);
        expect(Math.abs(third - 443.1628)).toBeLessThan(1e-4);
      }
    },
  );
});

const Features = z.object({
  features: z.array(
    z.object({
      properties: z.object({ Layer: z.string() }),
      geometry: z.object({ type: z.string(), coordinates: z.array(z.unknown()) }),
    }),
  ),
});
const Place = z.tuple([z.number(), z.number()]).rest(z.number());

describe.skipIf(!hasGdal)('GDAL', () => {
  test.each(files)(
    '$label: every entity on its layer, in order, with its first point',
    ({ path, file, unit }) => {
      const run = spawnSync('ogr2ogr', ['-f', 'GeoJSON', '/vsistdout/', path], { encoding: 'utf8' });
      expect(run.status).toBe(0);
      const { features } = Features.parse(JSON.parse(run.stdout));
      const kind = file.kind === 'finished' ? 'finished' : 'cutpath';
      expect(features.map(({ properties }) => properties.Layer)).toEqual(
        ['score', 'etch', 'mark', 'opening', 'opening', 'opening', 'outline'].map(
          (name) => `${kind}-${name}`,
        ),
      );
      if (file.kind !== 'cut') return;
      const scale = unit === 'mm' ? 1 : 25.4;
      features.slice(3).forEach(({ geometry }, index) => {
        const [x, y] = Place.parse(geometry.coordinates[0]);
        const pierce = bracketPlan.contours[index]?.leadIn.pierce;
        expect(geometry.type).toBe('LineString');
        expect(Math.abs(x * scale - (pierce?.x ?? 0))).toBeLessThan(1e-6);
        expect(Math.abs(y * scale - (pierce?.y ?? 0))).toBeLessThan(1e-6);
      });
    },
  );
});
