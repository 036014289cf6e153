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
