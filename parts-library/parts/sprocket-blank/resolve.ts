// A sprocket blank resolved once: pattern, pilot, outside, and the chain that runs beside it.
import { boltEnvelope, findChain, goodWeb, type Chain } from '../../handbook/index.js';
import { resolvePattern, type ResolvedPattern } from '../shared/pattern.js';
import { refusal, rememberResolved, type Resolved } from '../shared/resolved.js';
import type { SprocketBlank } from './parameters.js';

/** Edge distance when none is given, in bolt diameters: the upper end of the shop rule of 1.5 to 2. */
const USUAL_EDGE = 2;

export interface Blank {
  readonly chain: Chain;
  readonly pattern: ResolvedPattern;
  /** Pilot bore finished and as cut, mm; none on a whole disc. */
  readonly pilot: { readonly finished: number; readonly drawn: number } | undefined;
  /** Diameter, mm. */
  readonly outside: number;
  /** From the bolts to the outside, mm. */
  readonly edge: number;
  /** From the middle to the outside of a bolt head or washer, mm. */
  readonly headReach: number;
}

function resolveFresh(p: SprocketBlank): Resolved<Blank> {
  const chain = findChain(p.chain);
  if (!chain.found) return refusal('chain', chain.says);
  const answer = resolvePattern(p, 'pattern1');
  if (!answer.ok) return answer;
  const { pattern } = answer.value;
  const reach = Math.max(...pattern.holes.map(({ at }) => Math.hypot(at.x, at.y)));
  const usual = Math.max(
    USUAL_EDGE * pattern.thread.diameter,
    goodWeb(p.thickness.mm).value + pattern.holeDiameter / 2,
  );
  const outside = p.outside?.mm ?? 2 * (reach + (p.edge?.mm ?? usual));
  const envelope = boltEnvelope(pattern.thread);
  const head = envelope.found
    ? Math.max(envelope.row.washerOutside.value, envelope.row.acrossCorners.value) / 2
    : 0;
  if (outside <= 2 * reach) {
    return refusal(
      'outside',
      `⌀${outside.toFixed(2)} mm does not reach round the bolts on ⌀${(2 * reach).toFixed(2)} mm; usual here is ⌀${(2 * (reach + usual)).toFixed(1)} mm.`,
    );
  }
  const finished = p.bore.mm;
  const drawn = p.pilot === 'bored' ? finished - p.machiningAllowance.mm : finished;
  if (p.pilot !== 'none' && drawn <= 0) {
    return refusal(
      'machiningAllowance',
      `Nothing is left to cut of a bore of ${finished.toFixed(2)} mm; a smaller allowance would do.`,
    );
  }
  if (p.pilot !== 'none' && finished >= outside) {
    return refusal(
      'bore',
      `A bore of ⌀${finished.toFixed(2)} mm leaves nothing of a disc of ⌀${outside.toFixed(2)} mm; a smaller bore or a larger outside would do.`,
    );
  }
  return {
    ok: true,
    value: {
      chain: chain.row,
      pattern: answer.value,
      pilot: p.pilot === 'none' ? undefined : { finished, drawn },
      outside,
      edge: outside / 2 - reach,
      headReach: reach + head,
    },
  };
}

/** The same parameters are resolved once. */
export const resolveBlank = rememberResolved(resolveFresh, 'outside');
