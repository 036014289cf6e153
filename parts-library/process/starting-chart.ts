// The generic starting chart put together: classes, rows and the citation of every field.

import type { Source } from '../handbook/index.js';
import type { ChartField, ChartMaterial, ChartRow, Confidence, CutChart, ProcessClass } from './chart.js';
import { startingBlocks } from './starting-rows.js';
import type { StartingBlock, StartingRow } from './starting-rows.js';

const speedRead: Source = {
  title: 'Air-plasma maker’s operating manual, 40 A class',
  where: 'cutting-speed page, 30 A columns, quality and maximum',
  certainty: 'published',
};
const speedInterpolated: Source = {
  title: 'Air-plasma maker’s operating manual, 40 A class',
  where: '30 A columns, 5 mm read between the printed 4 and 6 mm',
  certainty: 'from memory',
};
const speed45: Source = {
  title: '45 A mild steel speeds',
  where: 'between a published 40 A hand-torch chart and remembered mechanised charts, smoothed',
  certainty: 'from memory',
};
const speedHigh: Source = {
  title: '65 to 105 A mild steel speeds',
  where: 'remembered mechanised charts, smoothed; one published anchor: 55 A, 6.35 mm, 1780 mm/min',
  certainty: 'from memory',
};
const speedRatio: Source = {
  title: 'Stainless and aluminium speeds at 30 and 45 A',
  where: 'mild steel row times the ratio in a published 30 and 40 A chart; smoothed',
  certainty: 'from memory',
};
const speedLow: Source = {
  title: 'Stainless and aluminium speeds, 65 to 105 A',
  where: 'remembered; charts disagree whether aluminium is faster than steel: cut a speed ladder first',
  certainty: 'from memory',
};
const kerfModel: Source = {
  title: 'Kerf by class',
  where:
    'a + 0.05 t, at the low side of published course bands (25–30 A 1.27–1.52, 40–50 A 1.65–2.03, 65–80 A 2.03–2.79 mm)',
  certainty: 'from memory',
};
const pierceDelays: Source = {
  title: 'Pierce delay',
  where: 'remembered mechanised charts; the first rung of a ladder',
  certainty: 'from memory',
};
const cutHeightRead: Source = {
  title: 'Cut height 1.5 mm (0.060 in)',
  where: 'published table-maker’s and applications engineer’s notes, small systems up to 85 A',
  certainty: 'published',
};
const heights105: Source = {
  title: 'Heights at 105 A',
  where: 'cut 3.0 mm, pierce 6.0 mm',
  certainty: 'from memory',
};
const pierceHeight: Source = {
  title: 'Pierce height 3.8 mm',
  where: 'shielded mechanised torches; a published manual’s rule of 1.5 to 2 times cut height gives less',
  certainty: 'from memory',
};

const classes: readonly ProcessClass[] = [
  {
    id: 'air-30A',
    amps: 30,
    thinnest: 1.5,
    thickest: 5,
    pierceMax: 6,
    airLitresPerMinute: [110, 165],
    arcVolts: [105, 125],
    inputKilowatts: 4.2,
  },
  {
    id: 'air-45A',
    amps: 45,
    thinnest: 1.5,
    thickest: 10,
    pierceMax: 10,
    airLitresPerMinute: [150, 200],
    arcVolts: [125, 146],
    inputKilowatts: 7.2,
  },
  {
    id: 'air-65A',
    amps: 65,
    thinnest: 3,
    thickest: 12,
    pierceMax: 12,
    airLitresPerMinute: [190, 215],
    arcVolts: [120, 142],
    inputKilowatts: 10.3,
  },
  {
    id: 'air-85A',
    amps: 85,
    thinnest: 4,
    thickest: 16,
    pierceMax: 16,
    airLitresPerMinute: [190, 220],
    arcVolts: [120, 145],
    inputKilowatts: 14,
  },
  {
    id: 'air-105A',
    amps: 105,
    thinnest: 6,
    thickest: 16,
    pierceMax: 16,
    airLitresPerMinute: [215, 260],
    arcVolts: [138, 160],
    inputKilowatts: 19,
  },
];

/** Half width of the kerf until the shop has cut a coupon, mm. */
export const kerfPlusMinusUnmeasured = 0.3;

function speedSource(processClass: string, material: ChartMaterial, thickness: number): Source {
  const small = processClass === 'air-30A' || processClass === 'air-45A';
  if (material !== 'mild steel') return small ? speedRatio : speedLow;
  if (processClass === 'air-45A') return speed45;
  if (processClass !== 'air-30A') return speedHigh;
  return thickness === 5 ? speedInterpolated : speedRead;
}

function confidence(processClass: string, material: ChartMaterial): Confidence {
  if (material !== 'mild steel') return 'low';
  return processClass === 'air-30A' ? 'medium' : 'medium-low';
}

function chartRowOf({ processClass, material }: StartingBlock, row: StartingRow): ChartRow {
  const [thickness, startSpeed, ceilingSpeed, kerf, pierceSeconds, edgeStart] = row;
  const large = processClass === 'air-105A';
  const exceptions: Partial<Record<ChartField, Source>> = {
    kerf: kerfModel,
    kerfPlusMinus: kerfModel,
    pierceSeconds: pierceDelays,
    cutHeight: large ? heights105 : cutHeightRead,
    pierceHeight: large ? heights105 : pierceHeight,
  };
  return {
    processClass,
    material,
    thickness,
    startSpeed,
    ceilingSpeed,
    kerf,
    kerfPlusMinus: kerfPlusMinusUnmeasured,
    ...(pierceSeconds === null ? {} : { pierceSeconds }),
    edgeStart,
    cutHeight: large ? 3 : 1.5,
    pierceHeight: large ? 6 : 3.8,
    confidence: confidence(processClass, material),
    source: speedSource(processClass, material, thickness),
    exceptions,
  };
}

/** Starting values for air plasma, 30 to 105 A. Not a replacement for the chart of the nozzle in use. */
export const startingChart: CutChart = {
  title: 'Generic air-plasma starting chart',
  version: 'starting-1',
  starting: true,
  classes,
  rows: startingBlocks.flatMap((block) => block.rows.map((row) => chartRowOf(block, row))),
};
