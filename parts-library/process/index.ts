// The process: cut chart, holes, leads, machine and tools; the facts that checks and cut plans both need.

export { chartRow } from './chart.js';
export type {
  ChartAnswer,
  ChartField,
  ChartMaterial,
  ChartQuestion,
  ChartRow,
  Confidence,
  CutChart,
  ProcessClass,
} from './chart.js';
export { kerfPlusMinusUnmeasured, startingChart } from './starting-chart.js';
export { suggestClass } from './suggest-class.js';
export type { ClassSuggestion } from './suggest-class.js';
export { chartMaterial, chartMaterialFor } from './chart-material.js';
export {
  holeKerf,
  holeSpeedFactor,
  holeSpeedFloor,
  holeSpeedSource,
  holeVerdict,
  largestHoleByMethod,
} from './holes.js';
export type { HoleJudgement, HoleKerf, HoleVerdict } from './holes.js';
export {
  leadInFloor,
  leadInLength,
  leadRule,
  partSpacing,
  pierceClearance,
  pierceRadius,
  smallestInsideRadius,
} from './leads.js';
export type { PartSpacing, PierceClearance } from './leads.js';
export {
  couponSource,
  delayRungs,
  holeKerfFrom,
  holeLadderMultiples,
  holeSpeedRows,
  holeTaper,
  kerfAxesApart,
  kerfFromCoupon,
  mostDelayRungs,
  runUp,
  slotForTab,
  speedShares,
  tabFitSource,
} from './coupons.js';
export type { KerfReading } from './coupons.js';
export { drillDrift, pilotDiameter, pilotSource } from './drilling.js';
export { drillOnHand, hasTap, inchTools, metricTools } from './tools.js';
export type { ToolsOnHand } from './tools.js';
export { startingMachine } from './machine.js';
export type { MachineField, MachineRecord } from './machine.js';
