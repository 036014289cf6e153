// Rules of ears that are welded by an edge: the cope's tips, the gap of a pair, lean, what metal welds to what.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import type { Material, Source } from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { CopedEdge } from './coped-edge.js';

const FISHMOUTH: Source = {
  title: 'Coped edges',
  where: 'a tip thinner than about 30° burns away before the tube is hot',
  certainty: 'common practice',
};
/** Least angle between tube and plate's side at a coped corner, degrees, and where the fillet can still be seen into. */
const LEAST_TIP = 30;

/** Tips of a coped edge: where it spans nearly half the tube they run out thin along its side. */
export function checkCope(
  edge: CopedEdge,
  tube: number | undefined,
  fields: { readonly width: string; readonly tube: string },
  facts: Facts,
): readonly Finding[] {
  if (tube === undefined) return [];
  const tip = 90 - edge.halfDegrees;
  return [
    found({
      code: 'cope-tip',
      level: judge(['caution', tip < LEAST_TIP]),
      subject: { featureId: 'outline' },
      anchor: { x: 0, y: -edge.drop / 2 },
      field: fields.width,
      title: `Cope ${facts.format.length(edge.drop)} deep on ⌀${facts.format.length(tube)}, tips of ${digits(tip, 0)}°`,
      says:
        tip < LEAST_TIP
          ? 'Tips that thin burn away before the tube is hot, and the fillet has no room behind them. A narrower edge or a blunt corner would do.'
          : 'One true arc of the tube’s outside; it fits a tube as round as it was measured. Grind to a light fit, gap at most 1.6 mm.',
      value: quantity(tip, 'degrees'),
      limit: quantity(LEAST_TIP, 'degrees'),
      formula: `90 − asin(${digits(tube * Math.sin((edge.halfDegrees * Math.PI) / 180))} ÷ ${digits(tube)}) = ${digits(tip)}`,
      source: FISHMOUTH,
    }),
  ];
}

/** Root gap beyond which a fillet must be made larger by the gap, mm: AWS D1.1, 1/16 in. */
const LARGEST_GAP = 1.6;
const ROOT_GAP: Source = {
  title: 'AWS D1.1 fillet root opening',
  where: '1/16 in (1.6 mm); beyond it the leg grows by the gap',
  certainty: 'from memory',
};

/** How far a round tube's outside lies below its crest, `beside` mm from it; undefined beyond its side. */
export function dropBeside(tube: number, beside: number): number | undefined {
  const inside = (tube / 2) ** 2 - beside ** 2;
  return inside < 0 ? undefined : tube / 2 - Math.sqrt(inside);
}

/**
 * Straight edges along a round tube: each stands beside the crest, touches with its inner corner and gapes at its outer.
 * @param inner from the crest to the near face of an ear, mm; half a thickness before it for a single one
 */
export function checkAlong(
  tube: number,
  inner: number,
  thickness: number,
  fields: { readonly tube: string; readonly edge: string },
  facts: Facts,
): readonly Finding[] {
  const { length } = facts.format;
  const near = Math.max(0, inner);
  const outer = inner + thickness;
  const [low, lowest] = [dropBeside(tube, near), dropBeside(tube, outer)];
  const place = { code: 'root-gap', subject: { featureId: 'outline' }, anchor: { x: 0, y: 0 } } as const;
  if (low === undefined || lowest === undefined) {
    return [
      found({
        ...place,
        level: 'stop',
        field: fields.tube,
        title: `An ear ${length(outer)} from the crest stands beside a tube of ⌀${length(tube)}`,
        says: 'There is no tube under it. A larger tube, a smaller gap, or ears across the tube with a coped edge would do.',
        value: quantity(outer, 'mm'),
        limit: quantity(tube / 2, 'mm'),
        source: ROOT_GAP,
      }),
    ];
  }
  const gap = lowest - low;
  return [
    found({
      ...place,
      level: judge(['caution', gap > LARGEST_GAP]),
      field: fields.edge,
      title: `Straight edge along ⌀${length(tube)}: root gap ${length(gap)} at its outer side`,
      says: `Its near corner touches ${length(low)} below the crest, so the pin stands that much lower over the tube.${gap > LARGEST_GAP ? ' Bevel the edge to the tube, or make the outer leg larger by the gap.' : ''}`,
      value: quantity(gap, 'mm'),
      limit: quantity(LARGEST_GAP, 'mm'),
      formula: `(r − √(r² − ${digits(outer)}²)) − (r − √(r² − ${digits(near)}²)), r = ${digits(tube / 2)}: ${digits(lowest)} − ${digits(low)} = ${digits(gap)}`,
      source: ROOT_GAP,
    }),
  ];
}

const PAIR: Source = {
  title: 'A pair of ears round an eye',
  where: 'weld shrinkage draws the ears together: about 0.5 mm; tacked over a spacer, bolt in',
  certainty: 'common practice',
};
/** What the fillets draw a pair together, mm, and the play beyond which the pin is bent rather than sheared. */
const DRAWN_TOGETHER = 0.5;
const MUCH_PLAY = 3;

/** Whether the eye still goes in after welding; nothing for a single ear. */
export function checkPair(
  gap: number | undefined,
  eye: number,
  play: number,
  facts: Facts,
): readonly Finding[] {
  if (gap === undefined) return [];
  const { length } = facts.format;
  const level = judge(['caution', play < DRAWN_TOGETHER], ['note', play > MUCH_PLAY]);
  return [
    found({
      code: 'pair-gap',
      level,
      field: 'play',
      title: `Gap ${length(gap)} for an eye of ${length(eye)}`,
      says:
        level === 'caution'
          ? `Welding draws the ears together by about ${length(DRAWN_TOGETHER)}: the eye will bind. Weld over a spacer of the eye’s width plus ${length(DRAWN_TOGETHER)}, or leave more play.`
          : level === 'note'
            ? 'With that much play the pin is bent between the ears. Washers beside the eye would take it up.'
            : 'Tack the pair over a spacer of this gap with the bolt through both, and leave it in while welding.',
      value: quantity(play, 'mm'),
      limit: quantity(level === 'note' ? MUCH_PLAY : DRAWN_TOGETHER, 'mm'),
      formula: `${digits(eye)} + ${digits(play)} = ${digits(gap)}`,
      source: PAIR,
    }),
  ];
}

const SLENDER: Source = {
  title: 'Tall thin arms',
  where: 'height over thickness at most 8, or a flange; lateral buckling',
  certainty: 'from memory',
};
const MOST_SLENDER = 8;

/** A tall thin ear folds over sideways long before it breaks. */
export function checkLeanOver(
  height: number,
  thickness: number,
  field: string,
  facts: Facts,
): readonly Finding[] {
  const ratio = height / thickness;
  return [
    found({
      code: 'slender',
      level: judge(['caution', ratio > 2 * MOST_SLENDER], ['note', ratio > MOST_SLENDER]),
      subject: { featureId: 'outline' },
      anchor: { x: 0, y: height / 2 },
      field,
      title: `Height ${digits(ratio, 1)} thicknesses, at most ${MOST_SLENDER} without a gusset`,
      says:
        ratio > MOST_SLENDER
          ? `A side pull bends it over at the weld. Thicker plate, less height than ${facts.format.length(MOST_SLENDER * thickness)}, or a gusset would do.`
          : 'Stiff enough against side pulls for its height.',
      value: quantity(ratio, '1'),
      limit: quantity(MOST_SLENDER, '1'),
      formula: `${digits(height)} ÷ ${digits(thickness)} = ${digits(ratio, 1)}`,
      source: SLENDER,
    }),
  ];
}

const FILLER: Source = {
  title: 'What welds to what',
  where: 'steel is not fusion-welded to aluminium; stainless wants its own filler',
  certainty: 'common practice',
};

/** Metals other than carbon steel: what they weld to, and what the strengths here leave out. */
export function checkWeldMetal(material: Material, field: string): readonly Finding[] {
  if (material.family === 'carbon steel') return [];
  const isAluminium = material.family === 'aluminium';
  return [
    found({
      code: 'weldability',
      level: 'caution',
      field,
      title: isAluminium
        ? `${material.name} welds to aluminium alone, and loses its temper there`
        : `Stainless ${material.name}: filler and fume`,
      says: isAluminium
        ? 'Beside the bead little more than the soft strength is left, and the weld strengths here are for steel: count on none of them. Bolt it on, or have a welder who knows it choose alloy and filler.'
        : 'To a carbon-steel tube it wants a filler for dissimilar steels; the strengths here are for 483 MPa carbon-steel weld metal. Its fume holds chromium(VI).',
      source: FILLER,
    }),
  ];
}
