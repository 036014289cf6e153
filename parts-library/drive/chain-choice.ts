// The chain that the numbers count with: the one named, or the likeliest of what was measured.
import {
  chainElongation,
  findChain,
  serviceLoad,
  wearLimit,
  type Chain,
  type ServiceLoad,
  type WearLimit,
} from '../handbook/index.js';
import { alikeOf, rankChains, type Candidate } from './identify.js';
import type { Drive } from './parameters.js';

export interface Wear {
  /** Elongation, a share of 1; below 0 when the reading is shorter than new. */
  readonly elongation: number;
  readonly plusMinus: number;
}

export interface ChainChoice {
  readonly chain: Chain;
  readonly from: 'name' | 'readings';
  /** Chains that the readings do not tell apart from it, itself included; itself alone when it was named. */
  readonly alike: readonly Chain[];
  /** Least known strength among them. */
  readonly load: ServiceLoad | undefined;
  readonly wear: Wear | undefined;
  /** Elongation at which it is replaced on these sprockets. */
  readonly limit: WearLimit;
}

/** Least known tensile strength of the chain, N; undefined when no source gives one. */
export const tensileOf = (choice: ChainChoice | undefined): number | undefined =>
  choice?.load === undefined ? undefined : choice.load.neverNewtons * 2;

export interface ChainAnswer {
  readonly candidates: readonly Candidate[];
  readonly choice: ChainChoice | undefined;
}

function wearOf(p: Drive, chain: Chain): Wear | undefined {
  if (p.twelvePitches === undefined) return undefined;
  return {
    elongation: chainElongation(p.twelvePitches.mm, chain.pitch),
    plusMinus: (p.twelvePitches.plusMinus ?? 0) / (12 * chain.pitch),
  };
}

/** The chain named counts; else the likeliest that the readings fit. */
export function chooseChain(p: Drive): ChainAnswer {
  const candidates = rankChains(p);
  const named = p.chain === undefined ? undefined : findChain(p.chain);
  const [first] = candidates;
  const chain = named?.found === true ? named.row : first?.fits === true ? first.chain : undefined;
  if (chain === undefined) return { candidates, choice: undefined };
  const from = named?.found === true ? 'name' : 'readings';
  const alike = from === 'name' ? [chain] : alikeOf(candidates).map((one) => one.chain);
  const loads = alike.flatMap((one) => serviceLoad(one) ?? []).toSorted((a, b) => a.newtons - b.newtons);
  const limit = wearLimit(Math.max(p.motorTeeth, p.wheelTeeth), p.tensioner !== 'none');
  return { candidates, choice: { chain, from, alike, load: loads[0], wear: wearOf(p, chain), limit } };
}
