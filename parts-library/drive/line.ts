// The chain's line: links, exact centres, wrap, slack, and how far the tensioner has to go. Lengths mm.
import {
  centreDistance,
  chainLength,
  excessOf,
  idlerTravel,
  movementOf,
  outsideDiameter,
  sagOf,
  SLACK,
  wrapDegrees,
} from '../handbook/index.js';
import type { ChainChoice } from './chain-choice.js';
import type { Tensioner } from './chain-fields.js';
import type { Drive } from './parameters.js';

/** A count of links, and the centres at which that chain is just straight. */
export interface LinkChoice {
  readonly links: number;
  readonly centres: number;
  /** From the centre distance asked for, when there is one. */
  readonly moves?: number;
}

/** How a chain longer than its straight line hangs, all of it in the loose strand. */
export interface Slack {
  /** Chain beyond the straight line; below 0 when the chain is too short to go on. */
  readonly excess: number;
  readonly sag: number;
  /** Total movement at mid-span, pushed and pulled. */
  readonly movement: number;
}

export interface TakeUp {
  /** How far motor or axle moves out while the chain wears to its limit. */
  readonly centresForWear: number;
  /** One pitch of centres: then two links come out instead. */
  readonly centresForTwoLinks: number;
  /** How far an idler at mid-span pushes to swallow the same. */
  readonly idlerForWear: number;
}

export interface Line {
  readonly pitch: number;
  readonly links: number;
  /** Centres at which the chain of that many links is just straight, new. */
  readonly centres: number;
  /** The same for the chain as worn as it was measured; absent where it is not longer than new. */
  readonly wornCentres?: number;
  /** Where it is mounted: the centre distance given, else the exact one. */
  readonly mounted: number;
  /** Pitches along the line at the centre distance given; absent when the links alone were given. */
  readonly exactLinks?: number;
  /** Even counts around the exact length, and the odd one between that needs an offset link. */
  readonly choices: readonly LinkChoice[];
  readonly wrapSmall: number;
  readonly wrapLarge: number;
  /** Straight strand between the sprockets. */
  readonly span: number;
  /** Half of both outside diameters together: closer than that they touch. */
  readonly least: number;
  /** How the chain hangs where it is mounted, at the pitch that was measured; absent where the motor is set to it. */
  readonly slack?: Slack;
  /** Mid-span movement wanted. */
  readonly wanted: { readonly least: number; readonly reversing: number; readonly most: number };
  readonly takeUp: TakeUp;
}

/** Why there is no line. */
export interface NoLine {
  readonly field: 'links' | 'centres';
  readonly says: string;
}

interface Pair {
  readonly small: number;
  readonly large: number;
  readonly pitch: number;
}

const centresFor = ({ small, large, pitch }: Pair, links: number): number | undefined => {
  const pitches = centreDistance(small, large, links);
  return pitches === undefined ? undefined : pitches * pitch;
};

/**
 * The even count to take: where nothing or an idler keeps the chain tight the centres stay, so the chain must reach;
 * where the motor moves, the nearest.
 */
function evenLinks(exact: number, tensioner: Tensioner): number {
  // A length that is whole but for rounding needs no further link.
  const up = 2 * Math.ceil(exact / 2 - 1e-6);
  return tensioner === 'slots' ? 2 * Math.round(exact / 2) : up;
}

/** Counts around the exact length, those that go round both sprockets. */
function choicesAround(pair: Pair, exact: number, asked: number): readonly LinkChoice[] {
  const below = 2 * Math.floor(exact / 2 + 1e-6);
  return [below, below + 1, below + 2].flatMap((links) => {
    const centres = centresFor(pair, links);
    return centres === undefined ? [] : [{ links, centres, moves: centres - asked }];
  });
}

function slackAt(pair: Pair, links: number, mounted: number, elongation: number): Slack | undefined {
  const straight = chainLength(pair.small, pair.large, mounted / pair.pitch);
  const span = spanOf(pair, mounted);
  if (straight === undefined || span === undefined) return undefined;
  const excess = (links * (1 + elongation) - straight) * pair.pitch;
  return { excess, sag: sagOf(span, excess), movement: movementOf(span, excess) };
}

function spanOf({ small, large, pitch }: Pair, centres: number): number | undefined {
  const wrap = wrapDegrees(small, large, centres / pitch);
  return wrap === undefined ? undefined : centres * Math.sin((wrap * Math.PI) / 360);
}

/** What wear takes, from a new chain mounted where it is just straight. */
function takeUpOf(pair: Pair, links: number, centres: number, limit: number): TakeUp {
  const worn = centresFor(pair, links * (1 + limit)) ?? centres;
  const shorter = centresFor(pair, links - 2) ?? centres - pair.pitch;
  return {
    centresForWear: worn - centres,
    centresForTwoLinks: centres - shorter,
    idlerForWear: idlerTravel(spanOf(pair, centres) ?? centres, links * limit * pair.pitch),
  };
}

/**
 * The line of a chain over both sprockets.
 *
 * @returns undefined when neither links nor centres are given; why there is none when the chain cannot go round
 */
export function lineOf(p: Drive, { chain, wear, limit }: ChainChoice): Line | NoLine | undefined {
  const small = Math.min(p.motorTeeth, p.wheelTeeth);
  const large = Math.max(p.motorTeeth, p.wheelTeeth);
  const pair: Pair = { small, large, pitch: chain.pitch };
  const asked = p.centres?.mm;
  const exactLinks = asked === undefined ? undefined : chainLength(small, large, asked / pair.pitch);
  if (asked !== undefined && exactLinks === undefined) {
    return { field: 'centres', says: 'At that centre distance one sprocket would stand inside the other.' };
  }
  const links = p.links ?? (exactLinks === undefined ? undefined : evenLinks(exactLinks, p.tensioner));
  if (links === undefined) return undefined;
  const centres = centresFor(pair, links);
  // A motor that moves is set where the chain is straight, unless the chain at hand is judged where it stands.
  const stands = p.links !== undefined || p.tensioner !== 'slots';
  const mounted = stands ? (asked ?? centres) : centres;
  const span = mounted === undefined ? undefined : spanOf(pair, mounted);
  if (centres === undefined || mounted === undefined || span === undefined) {
    return { field: 'links', says: `${links} links do not reach round ${small} and ${large} teeth.` };
  }
  const elongation = wear?.elongation ?? 0;
  const wornCentres = elongation > 0 ? centresFor(pair, links * (1 + elongation)) : undefined;
  const wrapSmall = wrapDegrees(small, large, mounted / pair.pitch) ?? 0;
  const slack = asked === undefined || !stands ? undefined : slackAt(pair, links, asked, elongation);
  return {
    pitch: pair.pitch,
    links,
    centres,
    ...(wornCentres === undefined ? {} : { wornCentres }),
    mounted,
    ...(exactLinks === undefined ? {} : { exactLinks }),
    choices: exactLinks === undefined ? [] : choicesAround(pair, exactLinks, asked ?? centres),
    wrapSmall,
    wrapLarge: 360 - wrapSmall,
    span,
    least: (outsideDiameter(pair.pitch, small) + outsideDiameter(pair.pitch, large)) / 2,
    ...(slack === undefined ? {} : { slack }),
    wanted: { least: SLACK.least * span, reversing: SLACK.reversing * span, most: SLACK.most * span },
    takeUp: takeUpOf(pair, links, centres, limit.replace),
  };
}

export const isLine = (line: Line | NoLine | undefined): line is Line =>
  line !== undefined && 'centres' in line;

/** Chain beyond the straight line at which the loose strand moves as is wanted of a drive that reverses, mm. */
export const wantedExcess = ({ span }: Line): number =>
  excessOf(span, (span * (SLACK.least + SLACK.reversing)) / 2);
