// The cut plan of a plate: every contour with its kerf, its direction, its lead-in and its place in the order.
import { isCircle, lengthOf, transformContour, transformPath, transformPoint } from '../geometry/index.js';
import { isCut, isLine, isMark } from '../model/index.js';
import type { CutFeature, Finding, Format, Staged } from '../model/index.js';
import { holeSpeedFactor } from '../process/index.js';
import { groundOf, kerfOf } from './ground.js';
import type { EarlierKerf } from './ground.js';
import { compensate, holeDiameter, smallHole } from './kerf.js';
import type { Compensated } from './kerf.js';
import { findLead } from './lead-in.js';
import type { Lead, NoLead } from './lead-in.js';
import { cutOrder } from './order.js';
import { placePath, transformOf } from './place.js';
import {
  MILLIMETRES,
  cameApart,
  chordPaths,
  noLead,
  outOfReach,
  roundOutlines,
  shortLeads,
  spoiledEdge,
  vanished,
} from './plan-findings.js';
import { requireUsableSettings } from './settings.js';
import type { CutContour, CutPlan, CutSettings, PlacedPart } from './types.js';

/**
 * Plans the cuts of parts that lie on a plate. Lines and marks come first, while the plate is whole; then part by part
 * in the order given, openings before the outline, smallest first. Every contour has a lead-in that is proved clear;
 * one for which there is no room, or which the kerf closes, is left out and named in a stop finding.
 *
 * Same input, same plan.
 *
 * @param placed parts with their placements; ids of placements must differ
 * @param settings lengths mm, speed mm/min
 * @param words how findings word lengths; millimetres when absent
 * @throws CutSettingsError for settings that nothing can be cut with
 * @example a ring of 150 with a bore of 57.35, kerf 1.6: two contours, pi x 55.75 then pi x 151.6 long
 */
export function planCuts(
  placed: readonly PlacedPart[],
  settings: CutSettings,
  words: Pick<Format, 'length'> = MILLIMETRES,
): Staged<CutPlan> {
  requireUsableSettings(settings);
  const ground = groundOf(
    placed.flatMap(({ placement, part }) =>
      part.features.filter(isCut).map(({ contour }) => ({
        placementId: placement.id,
        contour: transformContour(contour, transformOf(placement)),
      })),
    ),
  );
  const findings: Finding[] = [];
  const contours: CutContour[] = [];
  const earlier: EarlierKerf[] = [];
  const short: { placed: PlacedPart; feature: CutFeature; lead: Lead }[] = [];
  /** Holes of one size without room are one finding, by size and reason. */
  const roomless = new Map<
    string,
    { one: PlacedPart; feature: CutFeature; lead: NoLead; fromCentre: boolean; alike: number }
  >();
  let round = 0;
  // Copies of a part share its paths, which are worked out once in the part's own coordinates.
  const known = new Map<CutFeature, Compensated>();
  const pathsOf = (one: PlacedPart, feature: CutFeature): Compensated => {
    const before = known.get(feature);
    if (before !== undefined) return before;
    const made = compensate(feature, settings);
    known.set(feature, made);
    findings.push(...kerfFindings(one, feature, made, words));
    return made;
  };

  for (const one of placed) {
    const { placement, part } = one;
    for (const feature of cutOrder(part.features.filter(isCut))) {
      const { paths, kerf } = pathsOf(one, feature);
      const fromCentre = smallHole(feature) !== undefined;
      for (const path of paths.map((each) => placePath(each, placement))) {
        const lead = findLead(
          { path, kerf, fromCentre, placementId: placement.id },
          settings,
          ground,
          earlier,
        );
        if (!lead.found) {
          const size = fromCentre ? holeDiameter(feature)?.toFixed(6) : undefined;
          const key = `${one.part.name} ${size ?? feature.id} ${lead.because}`;
          const before = roomless.get(key);
          roomless.set(
            key,
            before === undefined
              ? { one, feature, lead, fromCentre, alike: 0 }
              : { ...before, alike: before.alike + 1 },
          );
          continue;
        }
        if (lead.start.spoils !== undefined) findings.push(spoiledEdge(one, feature, lead.start.spoils));
        if (!fromCentre && lead.standoff < lead.wanted) short.push({ placed: one, feature, lead });
        if (path.purpose === 'outline' && isCircle(path.contour) !== undefined) round++;
        contours.push({
          placementId: placement.id,
          featureId: feature.id,
          purpose: path.purpose,
          path: lead.path,
          exact: path.exact,
          leadIn: lead.leadIn,
          length: lengthOf(lead.path),
          speed: settings.speed * speedShare(feature),
        });
        earlier.push(kerfOf(lead.path), kerfOf(lead.leadIn.path));
      }
    }
  }
  findings.push(
    ...[...roomless.values()].map(({ one, feature, lead, fromCentre, alike }) =>
      noLead(one, feature, lead, fromCentre, alike),
    ),
  );
  const inexact = contours.filter(({ exact }) => !exact).length;
  if (inexact > 0) findings.push(chordPaths(inexact));
  findings.push(...shortLeads(short, words), ...roundOutlines(round));
  return { value: { settings, lines: linesOf(placed), marks: marksOf(placed), contours }, findings };
}

function kerfFindings(
  placed: PlacedPart,
  feature: CutFeature,
  { paths, kerf, uncut }: Compensated,
  words: Pick<Format, 'length'>,
): readonly Finding[] {
  if (paths.length === 0) return [vanished(placed, feature, kerf, words)];
  return [
    ...(feature.purpose === 'opening' && paths.length > 1
      ? [cameApart(placed, feature, paths.length, kerf, words)]
      : []),
    ...(uncut === undefined ? [] : [outOfReach(placed, feature, uncut, kerf, words)]),
  ];
}

/** Round holes are cut slower than the chart says; everything else at chart speed. */
function speedShare(feature: CutFeature): number {
  const diameter = holeDiameter(feature);
  return diameter === undefined ? 1 : holeSpeedFactor(diameter);
}

const linesOf = (placed: readonly PlacedPart[]): CutPlan['lines'] =>
  placed.flatMap(({ placement, part }) =>
    part.features.filter(isLine).map(({ id, purpose, path }) => ({
      placementId: placement.id,
      featureId: id,
      purpose,
      path: transformPath(path, transformOf(placement)),
      length: lengthOf(path),
    })),
  );

const marksOf = (placed: readonly PlacedPart[]): CutPlan['marks'] =>
  placed.flatMap(({ placement, part }) =>
    part.features.filter(isMark).map(({ id, at }) => ({
      placementId: placement.id,
      featureId: id,
      at: transformPoint(at, transformOf(placement)),
    })),
  );
