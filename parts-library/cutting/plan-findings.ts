// What planning has to say: openings that the kerf closes, edges it cannot reach, leads that do not fit.
import type { Point } from '../geometry/index.js';
import type { Source } from '../handbook/index.js';
import type { CutFeature, EdgeRole, Finding, Format } from '../model/index.js';
import { leadRule } from '../process/index.js';
import type { Lead, NoLead } from './lead-in.js';
import type { PlacedPart } from './types.js';

/** Wording of lengths when the job's own format is not at hand. */
export const MILLIMETRES: Pick<Format, 'length'> = {
  length: (mm) => `${Number(mm.toFixed(3))} mm`,
};

type Words = Pick<Format, 'length'>;

const kerfSource: Source = {
  title: 'Kerf compensation',
  where:
    'the torch runs half a kerf beside the finished edge; a round cutter leaves nothing narrower than itself',
  certainty: 'common practice',
};

const subject = ({ placement }: PlacedPart, feature: CutFeature): Finding['subject'] => ({
  rowId: placement.rowId,
  placementId: placement.id,
  featureId: feature.id,
});

export const vanished = (placed: PlacedPart, feature: CutFeature, kerf: number, words: Words): Finding => ({
  code: 'kerf-closes-opening',
  level: 'stop',
  stage: 'plan',
  subject: subject(placed, feature),
  ...anchorOf(feature),
  title: `${feature.name} is narrower than the kerf`,
  says: `${feature.name} of ${placed.part.name} cannot be cut: nothing of it is left beside a kerf of ${words.length(kerf)}. Drill it, or make it wider.`,
  limit: { amount: kerf, unit: 'mm' },
  source: kerfSource,
});

export const cameApart = (
  placed: PlacedPart,
  feature: CutFeature,
  pieces: number,
  kerf: number,
  words: Words,
): Finding => ({
  code: 'kerf-parts-opening',
  level: 'caution',
  stage: 'plan',
  subject: subject(placed, feature),
  ...anchorOf(feature),
  title: `${feature.name} comes apart into ${pieces}`,
  says: `${feature.name} of ${placed.part.name} is narrower than the kerf of ${words.length(kerf)} in places: the torch cuts ${pieces} separate openings. Widen the narrow place to more than the kerf, or accept them.`,
  value: { amount: pieces, unit: '1' },
  limit: { amount: kerf, unit: 'mm' },
  source: kerfSource,
});

export const outOfReach = (
  placed: PlacedPart,
  feature: CutFeature,
  uncut: { readonly at: Point; readonly distance: number },
  kerf: number,
  words: Words,
): Finding => ({
  code: 'kerf-out-of-reach',
  level: 'caution',
  stage: 'plan',
  subject: subject(placed, feature),
  anchor: uncut.at,
  title: `${feature.name}: ${words.length(uncut.distance)} stays uncut`,
  says:
    `At x ${words.length(uncut.at.x)}, y ${words.length(uncut.at.y)} the edge of ${feature.name} lies in a pocket or corner that a kerf of ` +
    `${words.length(kerf)} does not enter: ${words.length(uncut.distance)} of metal stays there. Open it wider than the kerf, or finish it by hand.`,
  value: { amount: uncut.distance, unit: 'mm' },
  limit: { amount: kerf / 2, unit: 'mm' },
  source: kerfSource,
});

export const chordPaths = (count: number): Finding => ({
  code: 'kerf-path-chords',
  level: 'note',
  stage: 'plan',
  subject: {},
  title: `${count} ${count === 1 ? 'contour follows' : 'contours follow'} short straight lines`,
  says: `${count} of the torch paths could not be kept in true arcs; they run along short straight lines, at most 0.01 mm off, on the scrap side.`,
  value: { amount: count, unit: '1' },
  limit: { amount: 0.01, unit: 'mm' },
  source: kerfSource,
});

/** `alike` counts the further holes of the same size that have no room for the same reason. */
export const noLead = (
  placed: PlacedPart,
  feature: CutFeature,
  { because }: NoLead,
  fromCentre: boolean,
  alike: number,
): Finding => ({
  code: 'lead-in-no-room',
  level: 'stop',
  stage: 'plan',
  subject: subject(placed, feature),
  ...anchorOf(feature),
  title: `No room to pierce for ${feature.name}${alike > 0 ? ` and ${alike} more of its size` : ''}`,
  says:
    `${feature.name} of ${placed.part.name} cannot be cut: every start round it was tried down to the shortest lead-in. At the best of them ${because}. ` +
    (feature.purpose === 'outline'
      ? 'Leave more room round the part.'
      : fromCentre
        ? 'Mark its centre and drill it.'
        : 'Make it wider, or drill and saw it.'),
  source: leadRule,
});

export const spoiledEdge = (placed: PlacedPart, feature: CutFeature, role: EdgeRole): Finding => ({
  code: 'lead-in-on-kept-edge',
  level: 'caution',
  stage: 'plan',
  subject: subject(placed, feature),
  ...anchorOf(feature),
  title: `${feature.name} starts on a ${role} edge`,
  says: `No other place of ${feature.name} has room for a pierce, so the cut starts on its ${role} edge. Dress the start flush with a file afterwards.`,
  source: leadRule,
});

/** One note for all lead-ins that had to be shorter than wanted. */
export const shortLeads = (
  short: readonly { readonly placed: PlacedPart; readonly feature: CutFeature; readonly lead: Lead }[],
  words: Words,
): readonly Finding[] => {
  const first = short[0];
  if (first === undefined) return [];
  const least = short.reduce(
    (worst, next) => (next.lead.standoff < worst.lead.standoff ? next : worst),
    first,
  );
  return [
    {
      code: 'lead-in-short',
      level: 'note',
      stage: 'plan',
      subject: subject(least.placed, least.feature),
      ...anchorOf(least.feature),
      title: `${short.length} ${short.length === 1 ? 'lead-in is' : 'lead-ins are'} short`,
      says:
        `${words.length(least.lead.wanted)} from pierce to edge is wanted; there was not room for it everywhere. The shortest is ` +
        `${least.feature.name} of ${least.placed.part.name} with ${words.length(least.lead.standoff)}; the pierce still clears every edge.`,
      value: { amount: least.lead.standoff, unit: 'mm' },
      limit: { amount: least.lead.wanted, unit: 'mm' },
      source: leadRule,
    },
  ];
};

/** One note for all round outlines, since nothing on the part shows where they start. */
export const roundOutlines = (count: number): readonly Finding[] =>
  count === 0
    ? []
    : [
        {
          code: 'lead-in-round-outline',
          level: 'note',
          stage: 'plan',
          subject: {},
          title: `${count} round ${count === 1 ? 'outline starts' : 'outlines start'} at 6 o'clock`,
          says: `A round outline has no corner to hide the start: look for it at 6 o'clock as the part lies on the plate (lowest y), or beside that place where there was no room, and dress it there.`,
          value: { amount: count, unit: '1' },
          source: leadRule,
        },
      ];

/** A place on the feature, in the part's coordinates. */
const anchorOf = ({ contour }: CutFeature): Pick<Finding, 'anchor'> => {
  const first = contour[0];
  return first === undefined ? {} : { anchor: { x: first.x, y: first.y } };
};
