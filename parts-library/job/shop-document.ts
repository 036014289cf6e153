// The shop as stored: chart, machine record, tools and rack, with the schema that guards them.
import { z } from 'zod';
import type { CutChart, MachineRecord, ToolsOnHand } from '../process/index.js';
import { guardJson } from './json-guard.js';
import { pointerTo } from './pointer.js';
import { startingShop, type RackPlate, type ShopFacts } from './shop.js';
import type { JobProblem } from './types.js';

export const SHOP_FORMAT = 'fishplate-shop';
export const SHOP_VERSION = 1;

/** Everything about a shop that jobs share. It has a history of its own. */
export interface ShopDocument extends ShopFacts {
  readonly format: typeof SHOP_FORMAT;
  readonly version: typeof SHOP_VERSION;
  /** 0 are the starting values; grows by one with every change. */
  readonly revision: number;
}

const text = z.string().min(1).max(500);
const positive = z.number().positive().max(1e6);
const notNegative = z.number().min(0).max(1e6);

const source = z.strictObject({
  title: text,
  where: z.string().max(500),
  certainty: z.enum(['published', 'common practice', 'from memory']),
});
const exceptionsFor = <const F extends string>(fields: readonly [F, ...F[]]) =>
  z.partialRecord(z.enum(fields), source).exactOptional();
const range = z.tuple([notNegative, notNegative]).readonly();

const processClass = z.strictObject({
  id: text,
  amps: positive,
  thinnest: positive,
  thickest: positive,
  pierceMax: positive,
  airLitresPerMinute: range,
  arcVolts: range,
  inputKilowatts: positive,
});

const chartRow = z.strictObject({
  processClass: text,
  material: z.enum(['mild steel', 'stainless', 'aluminium']),
  thickness: positive,
  startSpeed: positive,
  ceilingSpeed: positive,
  kerf: positive,
  kerfPlusMinus: notNegative,
  pierceSeconds: notNegative.exactOptional(),
  edgeStart: z.boolean(),
  cutHeight: positive,
  pierceHeight: positive,
  confidence: z.enum(['measured', 'medium', 'medium-low', 'low']),
  source,
  exceptions: exceptionsFor([
    'startSpeed',
    'ceilingSpeed',
    'kerf',
    'kerfPlusMinus',
    'pierceSeconds',
    'cutHeight',
    'pierceHeight',
  ]),
});

const chart: z.ZodType<CutChart> = z.strictObject({
  title: text,
  version: text,
  starting: z.boolean(),
  classes: z.array(processClass).min(1).max(100),
  rows: z.array(chartRow).min(1).max(5000),
});

const machine: z.ZodType<MachineRecord> = z.strictObject({
  name: text,
  starting: z.boolean(),
  travel: z.strictObject({ x: positive, y: positive }),
  rapidSpeed: positive,
  acceleration: positive,
  junctionDeviation: positive,
  probeSeconds: notNegative,
  transferSeconds: notNegative,
  dropSeconds: notNegative,
  retractSeconds: notNegative,
  squareSide: z.enum(['right', 'left']),
  slatPitch: positive,
  source,
  exceptions: exceptionsFor([
    'travel',
    'rapidSpeed',
    'acceleration',
    'junctionDeviation',
    'probeSeconds',
    'transferSeconds',
    'dropSeconds',
    'retractSeconds',
    'squareSide',
    'slatPitch',
  ]),
});

const tools: z.ZodType<ToolsOnHand> = z.strictObject({
  drills: z.array(text).max(1000),
  taps: z.array(text).max(1000),
  largestDrill: positive,
  bending: z.strictObject({ newtons: positive, longest: positive }).exactOptional(),
  source,
});

const plates: z.ZodType<RackPlate[]> = z
  .array(
    z.strictObject({ name: text, material: text, thickness: positive, width: positive, height: positive }),
  )
  .max(1000);

/** What a shop document may hold; strict throughout. */
export const shopSchema: z.ZodType<ShopDocument> = z.strictObject({
  format: z.literal(SHOP_FORMAT),
  version: z.literal(SHOP_VERSION),
  revision: z.number().int().min(0),
  chart,
  machine,
  tools,
  plates,
});

/** The shop before anything was entered. */
export const startingShopDocument: ShopDocument = {
  format: SHOP_FORMAT,
  version: SHOP_VERSION,
  revision: 0,
  ...startingShop,
};

export type OpenedShop =
  | { readonly ok: true; readonly shop: ShopDocument }
  | { readonly ok: false; readonly problems: readonly JobProblem[] };

/** Opens a shop document from anywhere, or says what is wrong with it and where. */
export function openShop(json: unknown): OpenedShop {
  const guarded = guardJson(json);
  if (!guarded.ok) return { ok: false, problems: [guarded.problem] };
  const parsed = shopSchema.safeParse(guarded.value);
  if (parsed.success) return { ok: true, shop: parsed.data };
  return {
    ok: false,
    problems: parsed.error.issues
      .slice(0, 20)
      .map(({ path, message }) => ({ path: pointerTo(path.map(String)), says: `${message}.` })),
  };
}
