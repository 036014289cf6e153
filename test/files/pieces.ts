// What the file tests write: a plate with every kind of feature, and its plan.
import { makeContour } from '../../parts-library/geometry/index.js';
import { planCuts } from '../../parts-library/cutting/index.js';
import {
  writeCutDxf,
  writeCutSvg,
  writeFinishedDxf,
  writeFinishedSvg,
} from '../../parts-library/files/index.js';
import type { CutFileInfo, WrittenFile } from '../../parts-library/files/index.js';
import type { Part } from '../../parts-library/model/index.js';
import { hole, opening, outline, partOf, place, settings, slot } from '../cutting/shop.js';

const quarter = Math.SQRT2 - 1;

/** 120 x 80 with corners of 10, a hollow of radius 15 in its top edge, two holes, a slot, a curved score, a label, a mark. */
export const bracket: Part = {
  ...partOf('battery tray foot', [
    outline(
      makeContour(
        [
          { x: 10, y: 0, bulge: 0 },
          { x: 110, y: 0, bulge: quarter },
          { x: 120, y: 10, bulge: 0 },
          { x: 120, y: 70, bulge: quarter },
          { x: 110, y: 80, bulge: 0 },
          { x: 75, y: 80, bulge: -1 },
          { x: 45, y: 80, bulge: 0 },
          { x: 10, y: 80, bulge: quarter },
          { x: 0, y: 70, bulge: 0 },
          { x: 0, y: 10, bulge: quarter },
        ],
        { direction: 'outline' },
      ),
    ),
    hole('hole.2', 100, 60, 11),
    hole('hole.1', 20, 60, 11),
    opening('slot', slot(40, 14, 60, 25)),
    {
      id: 'bend.1',
      name: 'bend line',
      purpose: 'score',
      path: {
        vertices: [
          { x: 5, y: 45, bulge: 0 },
          { x: 60, y: 45, bulge: 0.1 },
          { x: 115, y: 45, bulge: 0 },
        ],
      },
    },
    {
      id: 'label',
      name: 'label',
      purpose: 'etch',
      path: {
        vertices: [
          { x: 10, y: 10, bulge: 0 },
          { x: 25, y: 10, bulge: 0 },
        ],
      },
    },
    { id: 'mark.1', name: 'centre mark', purpose: 'mark', at: { x: 100, y: 20.0000004 } },
  ]),
  quantity: 4,
};

export const bracketPlan = planCuts([place(bracket)], settings).value;

export const info: CutFileInfo = { name: bracket.name, material: bracket.material, quantity: 4 };

export const versions = ['R12', 'R2000'] as const;
export const units = ['mm', 'in'] as const;

export interface Written {
  readonly label: string;
  readonly version: 'R12' | 'R2000';
  readonly unit: 'mm' | 'in';
  readonly file: WrittenFile;
}

/** Both kinds in both versions and both units. */
export const everyDxf: readonly Written[] = versions.flatMap((version) =>
  units.flatMap((unit) => {
    const options = { baseName: 'tray-foot', version, unit };
    return [writeFinishedDxf(bracket, options), writeCutDxf(bracketPlan, info, options)].map((file) => ({
      label: `${version} ${unit} ${file.kind}`,
      version,
      unit,
      file,
    }));
  }),
);

export const finishedSvg = writeFinishedSvg(bracket, { baseName: 'tray-foot' });
export const cutSvg = writeCutSvg(bracketPlan, info, { baseName: 'tray-foot' });

/** Signed area of a closed run of vertices with bulge: the shoelace sum and a circular segment per arc, from school. */
export function areaByHand(
  vertices: readonly { readonly x: number; readonly y: number; readonly bulge?: number }[],
): number {
  return vertices.reduce((sum, a, i) => {
    const b = vertices[(i + 1) % vertices.length] ?? a;
    const angle = 4 * Math.atan(a.bulge ?? 0);
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    const radius = angle === 0 ? 0 : chord / (2 * Math.sin(angle / 2));
    return sum + (a.x * b.y - b.x * a.y) / 2 + (radius ** 2 * (angle - Math.sin(angle))) / 2;
  }, 0);
}
