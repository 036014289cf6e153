// The cut chart: what a class of nozzle does to a plate, row by row, and how to read between the rows.

import type { Cited } from '../handbook/index.js';

export type ChartMaterial = 'mild steel' | 'stainless' | 'aluminium';

/** How much a row can be trusted before a coupon was cut. `measured` is the shop's own. */
export type Confidence = 'measured' | 'medium' | 'medium-low' | 'low';

/** A class is one nozzle at one current; figures never mix between classes. */
export interface ProcessClass {
  readonly id: string;
  readonly amps: number;
  /** Thickness it is meant for, mm. */
  readonly thinnest: number;
  readonly thickest: number;
  /** Thickest plate it pierces, mm; above that the cut starts from an edge. */
  readonly pierceMax: number;
  readonly airLitresPerMinute: readonly [low: number, high: number];
  /** Typical arc voltage; never a set point. */
  readonly arcVolts: readonly [low: number, high: number];
  readonly inputKilowatts: number;
}

export type ChartField =
  'startSpeed' | 'ceilingSpeed' | 'kerf' | 'kerfPlusMinus' | 'pierceSeconds' | 'cutHeight' | 'pierceHeight';

/** One row, or a value read between two rows. */
export interface ChartRow extends Cited<ChartField> {
  readonly processClass: string;
  readonly material: ChartMaterial;
  readonly thickness: number;
  /** Speed for a clean edge, mm/min; the place to start. */
  readonly startSpeed: number;
  /** Speed beyond which the cut fails, mm/min. */
  readonly ceilingSpeed: number;
  readonly kerf: number;
  readonly kerfPlusMinus: number;
  /** Wait between arc and travel. Absent where this class cannot pierce the plate. */
  readonly pierceSeconds?: number;
  /** Start from an edge: the plate is thicker than the class pierces. */
  readonly edgeStart: boolean;
  readonly cutHeight: number;
  readonly pierceHeight: number;
  readonly confidence: Confidence;
}

export interface CutChart {
  readonly title: string;
  readonly version: string;
  /** True until the shop has measured: show as starting values. */
  readonly starting: boolean;
  readonly classes: readonly ProcessClass[];
  readonly rows: readonly ChartRow[];
}

export interface ChartQuestion {
  readonly processClass: string;
  readonly material: ChartMaterial;
  /** Measured thickness where there is one, mm. */
  readonly thickness: number;
}

export type ChartAnswer =
  | {
      readonly found: true;
      readonly row: ChartRow;
      /** True when the thickness lies outside the rows and the nearest row was taken. */
      readonly clamped: boolean;
      readonly notes: readonly string[];
    }
  | {
      readonly found: false;
      readonly field: 'processClass' | 'material' | 'thickness';
      readonly says: string;
      readonly known: readonly string[];
    };

const share = (from: number, to: number, at: number): number => (at - from) / (to - from);
const straight = (first: number, second: number, part: number): number => first + (second - first) * part;

/** Speed between two rows: a straight line on log–log paper, since straight interpolation reads too fast. */
function speedBetween(
  thin: ChartRow,
  thick: ChartRow,
  field: 'startSpeed' | 'ceilingSpeed',
  at: number,
): number {
  const exponent = Math.log(thick[field] / thin[field]) / Math.log(thick.thickness / thin.thickness);
  return thin[field] * (at / thin.thickness) ** exponent;
}

function pierceBetween(thin: ChartRow, thick: ChartRow, part: number): number | undefined {
  if (thin.pierceSeconds === undefined || thick.pierceSeconds === undefined) return undefined;
  return straight(thin.pierceSeconds, thick.pierceSeconds, part);
}

function rowBetween(thin: ChartRow, thick: ChartRow, thickness: number, edgeStart: boolean): ChartRow {
  const part = share(thin.thickness, thick.thickness, thickness);
  const pierceSeconds = pierceBetween(thin, thick, part);
  const { pierceSeconds: _, ...rest } = thin;
  return {
    ...rest,
    thickness,
    startSpeed: speedBetween(thin, thick, 'startSpeed', thickness),
    ceilingSpeed: speedBetween(thin, thick, 'ceilingSpeed', thickness),
    kerf: straight(thin.kerf, thick.kerf, part),
    kerfPlusMinus: Math.max(thin.kerfPlusMinus, thick.kerfPlusMinus),
    ...(pierceSeconds === undefined ? {} : { pierceSeconds }),
    edgeStart,
    cutHeight: straight(thin.cutHeight, thick.cutHeight, part),
    pierceHeight: straight(thin.pierceHeight, thick.pierceHeight, part),
    confidence: weaker(thin.confidence, thick.confidence),
  };
}

const trust: readonly Confidence[] = ['measured', 'medium', 'medium-low', 'low'];
const weaker = (first: Confidence, second: Confidence): Confidence =>
  trust.indexOf(first) > trust.indexOf(second) ? first : second;

/**
 * Read the chart for a plate. Speed is interpolated log–log in thickness, kerf, delay and heights straight;
 * outside the rows the nearest row is taken, with a note; classes are never mixed.
 *
 * @param chart the shop's chart or the starting chart
 * @param question class id, chart material, thickness in mm
 * @returns the row and what to know about it; or which field has no rows and what is known
 * @example chartRow(startingChart, {processClass: 'air-45A', material: 'mild steel', thickness: 6.35}) // 1333 mm/min
 */
export function chartRow(chart: CutChart, question: ChartQuestion): ChartAnswer {
  const { processClass, material, thickness } = question;
  if (!(thickness > 0) || !Number.isFinite(thickness)) {
    return {
      found: false,
      field: 'thickness',
      says: `A plate ${thickness} mm thick cannot be cut.`,
      known: [],
    };
  }
  const ofClass = chart.rows.filter((row) => row.processClass === processClass);
  if (ofClass.length === 0) {
    const known = chart.classes.map(({ id }) => id);
    return {
      found: false,
      field: 'processClass',
      says: `The chart “${chart.title}” has no class “${processClass}”. Known: ${known.join(', ')}.`,
      known,
    };
  }
  const rows = ofClass
    .filter((row) => row.material === material)
    .toSorted((first, second) => first.thickness - second.thickness);
  const thinnest = rows[0];
  const thickest = rows.at(-1);
  if (thinnest === undefined || thickest === undefined) {
    const known = [...new Set(ofClass.map((row) => row.material))];
    return {
      found: false,
      field: 'material',
      says: `The chart has no ${material} rows for ${processClass}. Known: ${known.join(', ')}.`,
      known,
    };
  }
  const pierceMax = chart.classes.find(({ id }) => id === processClass)?.pierceMax ?? Infinity;
  const notes: string[] = [];
  if (chart.starting)
    notes.push('Starting values: the chart of your power source and nozzle, or a coupon, wins.');
  if (thickness > pierceMax) {
    notes.push(`${processClass} pierces up to ${pierceMax} mm: start this plate from an edge.`);
  }
  const nearest =
    thickness <= thinnest.thickness ? thinnest : thickness >= thickest.thickness ? thickest : undefined;
  if (nearest !== undefined) {
    const clamped = nearest.thickness !== thickness;
    if (clamped) {
      notes.push(
        `The chart covers ${thinnest.thickness} to ${thickest.thickness} mm for ${material} at ${processClass}; ` +
          `${thickness} mm takes the ${nearest.thickness} mm row unchanged. Cut a coupon first.`,
      );
    }
    const edgeStart = nearest.edgeStart || thickness > pierceMax;
    return { found: true, row: { ...nearest, thickness, edgeStart }, clamped, notes };
  }
  const upper = rows.findIndex((row) => row.thickness >= thickness);
  const thick = rows[upper] ?? thickest;
  const thin = rows[upper - 1] ?? thinnest;
  const row =
    thick.thickness === thickness ? thick : rowBetween(thin, thick, thickness, thickness > pierceMax);
  return { found: true, row, clamped: false, notes };
}
