// The pad: its plate seen from the edge, and the grip dimples of a folded one.
import type { Feature } from '../../model/index.js';
import type { Layout } from './layout.js';
import type { PedalArm } from './parameters.js';

/** Room between dimples and the pad's edge or bend, mm. */
const FROM_EDGE = 8;

const centred = (from: number, to: number, spacing: number): readonly number[] => {
  const count = Math.floor((to - from) / spacing) + 1;
  const start = (from + to - (count - 1) * spacing) / 2;
  return Array.from({ length: Math.max(0, count) }, (_, index) => start + index * spacing);
};

/** Centre marks in rows over the flap, clear of its edges and of the bend. */
export function dimplesOf(p: PedalArm, { flap }: Layout): readonly Feature[] {
  if (flap === undefined || p.dimples === 'no') return [];
  const spacing = p.dimpleSpacing.mm;
  const rows = centred(flap.fold + p.thickness.mm + FROM_EDGE, flap.top - FROM_EDGE, spacing);
  const columns = centred(flap.left + FROM_EDGE, flap.right - FROM_EDGE, spacing);
  return rows.flatMap((y, row) =>
    columns.map((x, column): Feature => ({
      id: `dimple.${row + 1}.${column + 1}`,
      name: `grip dimple ${row + 1}.${column + 1}`,
      purpose: 'mark',
      at: { x, y },
    })),
  );
}

/** How far the middle of the pad stands beside the arm's plane when everything is bent, mm. */
export function padAside(p: PedalArm): number {
  const joggled = p.jogOffset?.mm ?? 0;
  return joggled + (p.pad === 'folded' ? p.padWidth.mm / 2 : 0);
}
