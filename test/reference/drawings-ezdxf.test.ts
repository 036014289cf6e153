// Drawings written by a stranger (ezdxf) with its own idea of their areas: blocks, splines, ellipses, mirrored planes.
import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { readWell } from '../files/drawn.js';
import { areaByHand } from '../files/pieces.js';

const python = ['/usr/bin/python3', 'python3'].find(
  (command) => spawnSync(command, ['-c', 'import ezdxf']).status === 0,
);
if (python === undefined)
  console.warn('SKIPPED: no Python with ezdxf here; drawings of its making were not read.');

/** Each drawing as text, and the area inside its outline and inside each opening, from 0.0005 mm chords of ezdxf's own. */
const script = `
import io, json, math, random, sys, ezdxf
from ezdxf import path
from ezdxf.math import Vec3
random.seed(20261125)

def area(entity):
    if entity.dxftype() == 'SPLINE':
        # A spline is drawn where all its basis is there: from knot number degree to knot number of control points.
        curve, knots, degree = entity.construction_tool(), entity.knots, entity.dxf.degree
        low, high = knots[degree], knots[len(entity.control_points)]
        points = [curve.point(low + (high - low) * i / 20000) for i in range(20000)]
        flat = [(p.x, p.y) for p in points]
    else:
        flat = [(p.x, p.y) for p in path.make_path(entity).flattening(0.0005)]
    return abs(sum(x * v - u * y for (x, y), (u, v) in zip(flat, flat[1:] + flat[:1]))) / 2

def told(name, doc, msp):
    virtual = []
    def walk(entities):
        for e in entities:
            if e.dxftype() == 'INSERT':
                for one in (e.multi_insert() if e.mcount > 1 else [e]):
                    walk(one.virtual_entities())
            else:
                virtual.append(e)
    walk(msp)
    areas = sorted((area(e) for e in virtual), reverse=True)
    stream = io.StringIO()
    doc.write(stream)
    return dict(name=name, text=stream.getvalue(), outline=areas[0], openings=areas[1:])

def new(version='R2010'):
    doc = ezdxf.new(version)
    doc.header['$INSUNITS'] = 4
    msp = doc.modelspace()
    return doc, msp

drawings = []

doc, msp = new()
msp.add_lwpolyline([(0, 0, 0.2), (200, 0, 0), (200, 150, -0.1), (0, 150, 0)], format='xyb', close=True)
msp.add_circle((40, 40), 10)
msp.add_ellipse((120, 80), (40, 10), 0.4)
drawings.append(told('bulges, a circle, a turned ellipse', doc, msp))

doc, msp = new()
msp.add_lwpolyline([(-300, -300), (300, -300), (300, 300), (-300, 300)], close=True)
slot = doc.blocks.new('slot', base_point=(5, 3))
slot.add_lwpolyline([(0, 0, 0), (20, 0, 1), (20, 6, 0), (0, 6, 1)], format='xyb', close=True)
pair = doc.blocks.new('pair')
pair.add_blockref('slot', (0, 0), dxfattribs=dict(rotation=30, xscale=1.5, yscale=1.5))
pair.add_blockref('slot', (60, 0), dxfattribs=dict(rotation=-50, xscale=-2, yscale=2))
msp.add_blockref('pair', (-100, 100), dxfattribs=dict(rotation=77))
msp.add_blockref('pair', (100, 100), dxfattribs=dict(xscale=1, yscale=-1))
msp.add_blockref('slot', (-200, -200), dxfattribs=dict(rotation=15, column_count=3, row_count=2, column_spacing=90, row_spacing=70))
drawings.append(told('blocks in blocks, turned, scaled, mirrored, in rows', doc, msp))

doc, msp = new()
msp.add_lwpolyline([(-200, -200), (200, -200), (200, 200), (-200, 200)], close=True)
back = dict(extrusion=(0, 0, -1))
msp.add_circle((60, 40), 12, dxfattribs=back)
msp.add_lwpolyline([(80, -80, 1), (80, -60, 0), (110, -60, 1), (110, -80, 0)], format='xyb', close=True, dxfattribs=back)
msp.add_ellipse((50, 120), (30, 5), 0.5, dxfattribs=back)
odd = doc.blocks.new('odd')
odd.add_lwpolyline([(0, 0), (30, 0), (30, 10), (10, 10), (10, 25), (0, 25)], close=True)
msp.add_blockref('odd', (-60, 40), dxfattribs=dict(rotation=20, extrusion=(0, 0, -1)))
drawings.append(told('planes seen from behind', doc, msp))

for number in range(6):
    doc, msp = new()
    msp.add_lwpolyline([(-400, -400), (400, -400), (400, 400), (-400, 400)], close=True)
    count = random.randint(5, 14)
    ring = [Vec3.from_deg_angle(360 * i / count, random.uniform(90, 220)) for i in range(count)]
    spline = msp.add_spline()
    if number % 2:
        spline.set_closed_rational(ring, [random.uniform(0.5, 3) for _ in ring], degree=random.choice([2, 3, 4]))
    else:
        spline.set_closed(ring, degree=random.choice([2, 3, 4]))
    drawings.append(told(f'a closed spline, {number}', doc, msp))

doc, msp = new('R2000')
msp.add_lwpolyline([(-400, -400), (400, -400), (400, 400), (-400, 400)], close=True)
heart = [(0, -150), (200, 50), (150, 250), (0, 100), (-150, 250), (-200, 50), (0, -150)]
msp.add_open_spline(heart, degree=3)
drawings.append(told('a spline from its start to its start, with a corner there', doc, msp))

print(json.dumps(drawings))
`;

const Told = z.array(
  z.object({ name: z.string(), text: z.string(), outline: z.number(), openings: z.array(z.number()) }),
);

describe.skipIf(python === undefined)('drawings of ezdxf', () => {
  const ran =
    python === undefined
      ? undefined
      : spawnSync(python, ['-c', script], { encoding: 'utf8', maxBuffer: 1e8 });
  const drawings = ran === undefined ? [] : Told.parse(JSON.parse(ran.stdout));

  test('are there', () => {
    expect(ran?.stderr).toBe('');
    expect(drawings).toHaveLength(10);
  });

  test.each(drawings)('$name: the same areas', async ({ text, outline, openings }) => {
    const { of } = await readWell(text, { arcTolerance: 0.005 });
    const areas = (operation: 'outline' | 'opening'): readonly number[] =>
      of(operation)
        .map(({ vertices }) => Math.abs(areaByHand(vertices)))
        .toSorted((a, b) => b - a);
    const [own = 0] = areas('outline');
    // Arcs keep within 0.005 mm of the curve: over a length of 2 m that is 10 mm² at the very most.
    expect(Math.abs(own - outline)).toBeLessThan(1);
    const inner = areas('opening');
    expect(inner).toHaveLength(openings.length);
    inner.forEach((area, i) => expect(Math.abs(area - (openings[i] ?? 0)) / area).toBeLessThan(3e-4));
  });
});
