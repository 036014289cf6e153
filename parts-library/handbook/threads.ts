// Screw threads by the names people write: diameters, pitch, stress area, tap drill.

import { inches } from './inches.js';
import { found, notFound } from './lookup.js';
import type { Lookup } from './lookup.js';
import type { Cited, Source } from './source.js';
import * as data from './thread-data.js';
import type { Series } from './thread-data.js';

export type ThreadSystem = 'metric' | 'unified';

export type ThreadField = 'pitchDiameter' | 'minorInternal' | 'minorExternal' | 'stressArea' | 'tapDrill';

/** One thread, mm and mm². */
export interface Thread extends Cited<ThreadField> {
  /** `M10`, `M10x1.25`, `3/8-16 UNC`. */
  readonly name: string;
  /** Nominal size without the pitch, the key to clearance holes and heads: `M10`, `3/8`, `#10`. */
  readonly size: string;
  readonly system: ThreadSystem;
  readonly series: Series;
  readonly diameter: number;
  readonly pitch: number;
  readonly threadsPerInch?: number;
  /** d2, basic. */
  readonly pitchDiameter: number;
  /** D1, basic minor diameter of the tapped hole. */
  readonly minorInternal: number;
  /** d3 (UNR for unified), minor diameter of the bolt. */
  readonly minorExternal: number;
  /** Tensile stress area, mm². */
  readonly stressArea: number;
  /** The drill shops usually tap from. */
  readonly tapDrill: { readonly name: string; readonly diameter: number };
}

const round = (value: number): number => Math.round(value * 1e6) / 1e6;

function metricThread([diameter, pitch, series, stressArea, tapDrill]: data.MetricRow): Thread {
  const name = series === 'coarse' ? `M${diameter}` : `M${diameter}x${pitch}`;
  const exceptions: Partial<Record<ThreadField, Source>> = {};
  if (series === 'coarse') {
    exceptions.pitchDiameter = data.basicProfile;
    exceptions.minorInternal = data.basicProfile;
    exceptions.minorExternal = data.basicProfile;
  }
  if (data.areaFromFormula.includes(name)) exceptions.stressArea = data.stressAreaFormula;
  if (data.drillFromPitch.includes(name)) exceptions.tapDrill = data.drillByPitch;
  return {
    name,
    size: `M${diameter}`,
    system: 'metric',
    series,
    diameter,
    pitch,
    pitchDiameter: round(diameter - 0.649519 * pitch),
    minorInternal: round(diameter - 1.082532 * pitch),
    minorExternal: round(diameter - 1.226869 * pitch),
    stressArea,
    tapDrill: { name: `${tapDrill} mm`, diameter: tapDrill },
    source: series === 'coarse' ? data.metricCoarse : data.metricFine,
    exceptions,
  };
}

function unifiedThread(row: data.UnifiedRow): Thread {
  const [size, diameter, threadsPerInch, series, stressArea, drillName, drill] = row;
  const pitch = 1 / threadsPerInch;
  const computed = {
    pitchDiameter: data.basicProfile,
    minorInternal: data.basicProfile,
    minorExternal: data.basicProfile,
  };
  return {
    name: `${size}-${threadsPerInch} ${series === 'coarse' ? 'UNC' : 'UNF'}`,
    size,
    system: 'unified',
    series,
    diameter: inches(diameter),
    pitch: inches(pitch),
    threadsPerInch,
    pitchDiameter: inches(diameter - 0.649519 * pitch),
    minorInternal: inches(diameter - 1.082532 * pitch),
    minorExternal: inches(diameter - 1.190785 * pitch),
    stressArea: round(stressArea * 25.4 * 25.4),
    tapDrill: { name: drillName, diameter: inches(drill) },
    source: series === 'coarse' ? data.unifiedCoarse : data.unifiedFine,
    ...(series === 'fine' ? { exceptions: computed } : {}),
  };
}

const threads: readonly Thread[] = [
  ...data.metricRows.map(metricThread),
  ...data.unifiedRows.map(unifiedThread),
];

/** Every thread known here, metric first, by size. */
export function listThreads(): readonly Thread[] {
  return threads;
}

/** Decimal inches of a size as written: `3/8`, `#10`, `10`, `.375`. Undefined when it is none of these. */
function unifiedSize(written: string): string | undefined {
  const bare = written.replace(/^(no\.?|#)\s*/, '#');
  if (bare === '8' || bare === '10') return `#${bare}`;
  if (/^0?\.\d+$/.test(bare)) {
    const value = Number(bare);
    return data.unifiedRows.find(([, diameter]) => Math.abs(diameter - value) < 0.0006)?.[0];
  }
  return bare;
}

/** No thread is written longer than this, characters. */
const longestName = 40;

/** Reduce `M 10 × 1,25 - 6H` to `m10x1.25` and `3/8" - 16 UNC-2A` to `3/8-16 unc`. */
function tidy(written: string): string {
  return written
    .slice(0, longestName)
    .trim()
    .toLowerCase()
    .replace(/[×*]/g, 'x')
    .replace(/,/g, '.')
    .replace(/["″”]|\bin(ch)?\b/g, '')
    .replace(/[–—]/g, '-')
    .replace(/\s*-?\s*(\b[4-8][gh](\s*\/?\s*[4-8][gh])?|\b[123][ab])$/, '')
    .replace(/\s*([x-])\s*/g, '$1')
    .replace(/\s+/g, ' ')
    .trim();
}

function matches(tidied: string): readonly Thread[] {
  const metric = /^m ?(\d+(?:\.\d+)?)(?:x(\d*\.?\d+))?(?: ?(coarse|fine))?$/.exec(tidied);
  if (metric) {
    const [, diameter, pitch, series] = metric;
    const sized = threads.filter(
      (thread) => thread.system === 'metric' && thread.diameter === Number(diameter),
    );
    if (pitch !== undefined) return sized.filter((thread) => thread.pitch === Number(pitch));
    return sized.filter((thread) => thread.series === (series ?? 'coarse'));
  }
  const unified = /^((?:#|no\.? ?)?[\d./]+)(?:-(\d+))?(?:[ -]?(unc|unf|nc|nf|coarse|fine))?$/.exec(tidied);
  if (!unified) return [];
  const [, size = '', perInch, seriesWord] = unified;
  const sized = threads.filter((thread) => thread.system === 'unified' && thread.size === unifiedSize(size));
  const series = seriesWord === undefined ? undefined : /f/.test(seriesWord) ? 'fine' : 'coarse';
  return sized
    .filter((thread) => perInch === undefined || thread.threadsPerInch === Number(perInch))
    .filter((thread) => thread.series === (series ?? (perInch === undefined ? 'coarse' : thread.series)));
}

/**
 * Find a thread by the name on the drawing, the bolt or the tap. A size alone means the coarse series.
 *
 * @param written `M10`, `M10x1.25`, `m 10 × 1,25 - 6g`, `3/8-16`, `3/8" UNF`, `#10-32`, `1/4-20 UNC-2A`, `.375-16`
 * @returns the thread; or what is known: the pitches of that size, else every thread
 * @example findThread('3/8-16') // found, stress area 50.0 mm²
 */
export function findThread(written: string): Lookup<Thread> {
  const candidates = matches(tidy(written));
  const only = candidates[0];
  if (candidates.length === 1 && only !== undefined) return found(only);
  const sizeWord = /m ?\d+(?:\.\d+)?|#? ?[\d./]+/.exec(tidy(written))?.[0].replaceAll(' ', '') ?? '';
  const sameSize = threads.filter(
    (thread) => thread.size.toLowerCase() === sizeWord || thread.size === unifiedSize(sizeWord),
  );
  return notFound(
    written,
    'thread',
    (sameSize.length > 0 ? sameSize : threads).map((thread) => thread.name),
  );
}

/** On shop tap-drill charts 100 % thread is 1.299 P of the diameter, not the full internal height 1.0825 P. */
export const percentThreadConvention: Source = {
  title: 'Percent of thread by the 1.299 convention',
  where:
    'shop tap-drill charts: 100 % = 1.299 P of the diameter; by internal thread height (1.0825 P) the same drill reads 1.2 times as much',
  certainty: 'published',
};

/**
 * Drill diameter for a percent of thread, 1.299 convention.
 *
 * @param percent 50 to 85 in practice; about 65 % taps easier in plate thinner than 1.5 d and strips no sooner
 * @returns drill diameter, mm
 * @example drillForPercent(M8, 75) // 6.78
 */
export function drillForPercent(thread: Thread, percent: number): number {
  return thread.diameter - (1.299 * thread.pitch * percent) / 100;
}

/**
 * Percent of thread that a drill leaves, 1.299 convention.
 *
 * @param drill drill diameter, mm
 * @example percentOfThread(quarterTwenty, 5.1054) // 75.4 (#7 in 1/4-20)
 */
export function percentOfThread(thread: Thread, drill: number): number {
  return ((thread.diameter - drill) / (1.299 * thread.pitch)) * 100;
}
