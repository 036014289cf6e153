// From the grade on the drawing to the material column of the cut chart.

import { findMaterial } from '../handbook/index.js';
import type { Material, MaterialFamily, NotFound } from '../handbook/index.js';
import type { ChartMaterial } from './chart.js';

const columns: Readonly<Record<MaterialFamily, ChartMaterial>> = {
  'carbon steel': 'mild steel',
  'stainless steel': 'stainless',
  aluminium: 'aluminium',
};

/**
 * The chart column that a material is cut by.
 *
 * @example chartMaterial(s275) // 'mild steel'
 */
export function chartMaterial(material: Material): ChartMaterial {
  return columns[material.family];
}

/**
 * The chart column of a grade by its name.
 *
 * @returns the column, or what grades are known
 * @example chartMaterialFor('S275') // {found: true, row: 'mild steel'}
 */
export function chartMaterialFor(
  grade: string,
): { readonly found: true; readonly row: ChartMaterial } | NotFound {
  const material = findMaterial(grade);
  return material.found ? { found: true, row: chartMaterial(material.row) } : material;
}
