// The chain on hand against its number, and the chain round two sprockets: wrap, links, teeth that touch.
import { digits, found, judge, quantity, type Facts } from '../../../checks/index.js';
import {
  centresSource,
  chainLength,
  centreDistance as centreOf,
  findChain,
  LEAST_WRAP,
  listChains,
  outsideDiameter,
  wrapDegrees,
  wrapSource,
  type Chain,
  type Source,
} from '../../../handbook/index.js';
import type { Finding } from '../../../model/index.js';
import type { Entry } from '../../fields/index.js';

/** What was typed of chain and drive. */
export interface ChainOnHand {
  readonly chain: string;
  readonly teeth: number;
  readonly rollerMeasured?: Entry | undefined;
  readonly widthMeasured?: Entry | undefined;
  readonly otherTeeth?: number | undefined;
  readonly centreDistance?: Entry | undefined;
}

/** A roller or a width that is off by more than wear and a caliper explain belongs to another chain, mm. */
const ROLLER_OFF = 0.15;
const WIDTH_OFF = 0.4;

const MEASURED: Source = {
  title: 'A chain known by measure',
  where: `roller within ${ROLLER_OFF} mm, inner width within ${WIDTH_OFF} mm of its number; chains of one pitch differ in both`,
  certainty: 'common practice',
};

/** Chains of that pitch that both measures fit, nearest first. */
function fitting(pitch: number, roller: number | undefined, width: number | undefined): readonly Chain[] {
  const off = (chain: Chain): number =>
    Math.abs((roller ?? chain.roller) - chain.roller) / ROLLER_OFF +
    Math.abs((width ?? chain.innerWidth) - chain.innerWidth) / WIDTH_OFF;
  return listChains()
    .filter(
      (chain) =>
        Math.abs(chain.pitch - pitch) < 0.01 &&
        Math.abs((roller ?? chain.roller) - chain.roller) <= ROLLER_OFF &&
        Math.abs((width ?? chain.innerWidth) - chain.innerWidth) <= WIDTH_OFF,
    )
    .toSorted((a, b) => off(a) - off(b));
}

/** Measured roller and inner width against the chain that was named. */
export function checkChainOnHand(p: ChainOnHand, facts: Facts): readonly Finding[] {
  const chain = findChain(p.chain);
  if (!chain.found || (p.rollerMeasured === undefined && p.widthMeasured === undefined)) return [];
  const rows = [
    {
      field: 'rollerMeasured',
      what: 'Roller',
      measured: p.rollerMeasured,
      table: chain.row.roller,
      allowed: ROLLER_OFF,
    },
    {
      field: 'widthMeasured',
      what: 'Inner width',
      measured: p.widthMeasured,
      table: chain.row.innerWidth,
      allowed: WIDTH_OFF,
    },
  ];
  const others = fitting(chain.row.pitch, p.rollerMeasured?.mm, p.widthMeasured?.mm).filter(
    ({ name }) => name !== chain.row.name,
  );
  const length = facts.format.length;
  return rows.flatMap(({ field, what, measured, table, allowed }): readonly Finding[] => {
    if (measured === undefined) return [];
    const off = Math.abs(measured.mm - table);
    const isOff = off > allowed + (measured.plusMinus ?? 0);
    const named = others.map(({ name }) => name).join(', ');
    return [
      found({
        code: 'chain-on-hand',
        level: judge(['caution', isOff]),
        field,
        title: `${what} ${length(measured.mm)}, ${chain.row.name} has ${length(table)}`,
        says: isOff
          ? `That is not ${chain.row.name} chain. ${named === '' ? 'No chain of this pitch held here measures like it: measure again, and count twelve pitches.' : `Of this pitch it measures like ${named}.`}`
          : 'The chain on hand is what it was taken for.',
        value: quantity(measured.mm, 'mm', measured.plusMinus),
        limit: quantity(table, 'mm'),
        formula: `|${digits(measured.mm)} − ${digits(table)}| = ${digits(off)}, at most ${digits(allowed)}`,
        source: MEASURED,
        ...(isOff && others[0] !== undefined
          ? {
              remedies: others.slice(0, 3).map(({ name }) => ({
                says: `Take ${name} chain`,
                change: [{ op: 'add' as const, path: '/chain', value: name }],
              })),
            }
          : {}),
      }),
    ];
  });
}

/** A chain round this sprocket and another. */
export interface Drive {
  readonly small: number;
  readonly large: number;
  /** Pitches. */
  readonly centres: number;
  /** Degrees on the small sprocket. */
  readonly wrap: number;
  /** Links at the centre distance as given, and the next even number. */
  readonly links: number;
  readonly evenLinks: number;
  /** Centre distance for that number, mm. */
  readonly evenCentre: number | undefined;
}

/** @returns undefined when the other sprocket or the centre distance is not given, or the two do not go together */
export function driveOf(p: ChainOnHand, { pitch }: Chain): Drive | undefined {
  if (p.otherTeeth === undefined || p.centreDistance === undefined) return undefined;
  const small = Math.min(p.teeth, p.otherTeeth);
  const large = Math.max(p.teeth, p.otherTeeth);
  const centres = p.centreDistance.mm / pitch;
  const wrap = wrapDegrees(small, large, centres);
  const links = chainLength(small, large, centres);
  if (wrap === undefined || links === undefined) return undefined;
  const evenLinks = 2 * Math.ceil(links / 2 - 1e-9);
  const even = centreOf(small, large, evenLinks);
  return {
    small,
    large,
    centres,
    wrap,
    links,
    evenLinks,
    evenCentre: even === undefined ? undefined : even * pitch,
  };
}

/** Wrap of the small sprocket, and whether the two sprockets clear each other. */
export function checkWrap(p: ChainOnHand, chain: Chain, facts: Facts): readonly Finding[] {
  if (p.otherTeeth === undefined || p.centreDistance === undefined) {
    return [
      found({
        code: 'not-checked',
        level: 'note',
        field: p.otherTeeth === undefined ? 'otherTeeth' : 'centreDistance',
        title: 'wrap of the chain',
        says: 'Give the teeth of the other sprocket and the centre distance, and wrap and links are worked out.',
        source: wrapSource,
      }),
    ];
  }
  const length = facts.format.length;
  const least = (outsideDiameter(chain.pitch, p.teeth) + outsideDiameter(chain.pitch, p.otherTeeth)) / 2;
  const centre = p.centreDistance.mm;
  const drive = driveOf(p, chain);
  if (centre <= least || drive === undefined) {
    return [
      found({
        code: 'centre-distance',
        level: 'stop',
        field: 'centreDistance',
        title: `The two sprockets run into each other at ${length(centre)}`,
        says: `Their teeth need more than ${length(least)} between the shafts. A larger centre distance or fewer teeth would do.`,
        value: quantity(centre, 'mm'),
        limit: quantity(least, 'mm'),
        formula: `(${digits(outsideDiameter(chain.pitch, p.teeth))} + ${digits(outsideDiameter(chain.pitch, p.otherTeeth))}) ÷ 2 = ${digits(least)}`,
        source: centresSource,
      }),
    ];
  }
  const isShort = drive.wrap < LEAST_WRAP;
  return [
    found({
      code: 'wrap',
      level: judge(['caution', isShort]),
      field: 'centreDistance',
      title: `Chain wraps ${digits(drive.wrap, 1)}° of the ${drive.small} teeth, ${LEAST_WRAP}° wanted`,
      says: isShort
        ? 'Too few teeth share the pull, and the chain jumps. A larger centre distance, a smaller ratio, or an idler on the slack side near the small sprocket would do.'
        : 'Enough teeth share the pull. An idler belongs on the slack side.',
      value: quantity(drive.wrap, 'degrees'),
      limit: quantity(LEAST_WRAP, 'degrees'),
      formula: `180 − 2 asin((R − r) ÷ C), C = ${digits(centre)} ÷ ${digits(chain.pitch, 3)} = ${digits(drive.centres, 3)} pitches: ${digits(drive.wrap, 1)}°`,
      source: wrapSource,
    }),
  ];
}
