// The rules of a disc carrier, in the order in which they are read.
import {
  checkBoltLoads,
  checkBoltUp,
  checkBoreFit,
  checkEdgeDistance,
  checkHeadRoom,
  checkJointSlip,
  checkLabel,
  checkMachinedBlank,
  checkMaterialCaution,
  checkMeasuring,
  checkPatternsTogether,
  checkPlateSize,
  checkRunout,
  checkSmallHoles,
  checkSpacing,
  checkTapping,
  checkThreadEngagement,
  checkUse,
  checkWebs,
  mergeNotChecked,
  type Facts,
} from '../../checks/index.js';
import { findMaterial } from '../../handbook/index.js';
import type { CutFeature, Finding, Part } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import { underFields } from '../shared/bolted.js';
import { labelIsFaced } from '../shared/machined-label.js';
import { remediesOfGroup } from '../shared/machined-words.js';
import { checkCutHoles, checkHubPilot } from '../shared/pilot-checks.js';
import { wheelLoadMissing, wheelTorque } from '../shared/wheel-fields.js';
import { checkWheelRoom } from '../shared/wheel-room.js';
import { carrierOrders } from './orders.js';
import type { DiscCarrier } from './parameters.js';
import { resolveCarrier } from './resolve.js';
import { turningReach } from './reach.js';
import { checkDiscPilot, checkLobes } from './seats.js';

/** The shared rules' fields under this family's names. */
const NAMES = {
  use: 'release',
  machiningAllowance: 'boreAllowance',
  bore: 'hubPilot',
  hub: 'hubPilot',
  outside: 'edge',
} as const;

const fieldOfHole = ({ id }: CutFeature): { readonly field: string } => {
  if (id === 'centre') return { field: 'hubPilot' };
  return { field: id.startsWith('pattern2') ? 'pattern2.holes' : 'holes' };
};

/** All findings of the carrier. Strengths count with the thickness that machining leaves. */
export function checkDiscCarrier(part: Part, p: DiscCarrier, facts: Facts): readonly Finding[] {
  const answer = resolveCarrier(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const r = answer.value;
  const torque = wheelTorque(p);
  const load = torque === undefined ? undefined : { newtonMetres: torque, pullNewtons: 0 };
  const patterns = [
    { ...r.disc, thickness: r.lobe },
    { ...r.hub, thickness: r.finished },
  ];
  const findings = [
    ...checkMachinedBlank(p.release, 'brake-disc carrier', 'brake', carrierOrders(p, r, facts.format)),
    ...checkUse('brake'),
    ...checkMaterialCaution(material.row),
    ...checkSmallHoles(part, facts, fieldOfHole),
    ...checkCutHoles([r.disc.pattern, r.hub.pattern]),
    ...checkWebs(part, facts),
    ...patterns.flatMap(({ pattern, circle, parameters, thickness }) => [
      ...checkEdgeDistance(part, pattern, facts),
      ...checkSpacing(pattern, facts),
      ...checkBoltUp(pattern, facts),
      ...checkTapping(pattern, part.thickness, facts),
      ...checkThreadEngagement(pattern, { material: material.row, thickness }, p.boltGrade, facts),
      ...(load === undefined
        ? []
        : checkBoltLoads({ ...part, thickness }, pattern, load, material.row, p.boltGrade, facts)),
      ...checkJointSlip(pattern, torque, p.boltGrade, facts),
      ...checkHeadRoom(pattern, undefined, facts),
      ...checkMeasuring(pattern, circle, parameters.boltCircle.measure.readings, facts),
    ]),
    ...(load === undefined ? [wheelLoadMissing()] : []),
    ...checkPatternsTogether([r.disc.pattern, r.hub.pattern], facts),
    ...checkBoreFit(
      {
        way: p.pilotFit === 'H7' ? 'turned' : 'bore-after',
        finished: p.hubPilot.mm,
        cut: r.drawn,
        thickness: part.thickness,
      },
      facts,
    ),
    ...checkHubPilot(p, r.finished, facts),
    ...checkDiscPilot(p, r, facts),
    ...checkLobes(p, r, facts),
    ...checkRunout(
      {
        what: 'disc',
        rim: p.disc.mm,
        limit: p.runout.mm,
        seat: { error: p.flatness.mm, circle: r.disc.circle.diameter },
        hub: { error: p.hubRunout?.mm, circle: r.hub.circle.diameter },
      },
      facts,
    ),
    ...checkWheelRoom(
      p,
      { reach: turningReach(r), what: 'lobes and bolt heads', disc: p.disc.mm / 2 },
      facts,
    ),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...labelIsFaced(p.label),
    ...checkPlateSize(part, facts),
  ];
  return mergeNotChecked(remediesOfGroup(underFields(findings, NAMES), p.pattern2));
}
