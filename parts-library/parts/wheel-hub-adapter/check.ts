// The rules of a wheel-hub adapter, in the order in which they are read.
import {
  checkBoltLoads,
  checkBoltUp,
  checkBoreFit,
  checkEdgeDistance,
  checkJointOpening,
  checkJointSlip,
  checkLabel,
  checkMachinedBlank,
  checkMaterialCaution,
  checkMeasuring,
  checkPlateSize,
  checkRunout,
  checkSmallHoles,
  checkSpacing,
  checkTapping,
  checkThreadEngagement,
  checkWebs,
  found,
  mergeNotChecked,
  type BoltPattern,
  type Facts,
} from '../../checks/index.js';
import { findMaterial } from '../../handbook/index.js';
import type { CutFeature, Finding, Part } from '../../model/index.js';
import { STANDARD_GRAVITY } from '../../units/index.js';
import { letterText } from '../lettering/strokes.js';
import { underFields } from '../shared/bolted.js';
import { labelIsFaced } from '../shared/machined-label.js';
import { remediesOfGroup } from '../shared/machined-words.js';
import { checkCutHoles, checkHubPilot } from '../shared/pilot-checks.js';
import { wheelLoadMissing, wheelTorque } from '../shared/wheel-fields.js';
import { checkWheelRoom } from '../shared/wheel-room.js';
import { adapterOrders } from './orders.js';
import type { WheelHubAdapter } from './parameters.js';
import { resolveHubAdapter } from './resolve.js';
import { checkNutsUnderWheel, checkUnderNuts, checkWheelPilot, checkWheelSeat } from './seats.js';
import { checkNutRoom, checkStudHold, checkStudThread } from './studs.js';

/** The shared rules' fields under this family's names. */
const NAMES = {
  machiningAllowance: 'boreAllowance',
  bore: 'hubPilot',
  hub: 'hubPilot',
  edge: 'outside',
  'pattern2.holes': 'studs',
} as const;

const fieldOfHole = ({ id }: CutFeature): { readonly field: string } => ({
  field: id === 'centre' ? 'hubPilot' : 'holes',
});

/** Studs are as fixed in the plate as a tapped hole's bolt is. */
const asFixed = (pattern: BoltPattern): BoltPattern => ({ ...pattern, made: 'tapped' });

/** Moment of a tyre that slides sideways, N·m; undefined while mass or tyre is not known. */
function sideMoment(p: WheelHubAdapter): number | undefined {
  if (p.wheelMass === undefined || p.tyreDiameter === undefined) return undefined;
  return (p.grip.value * p.wheelMass.value * STANDARD_GRAVITY * p.tyreDiameter.mm) / 2000;
}

/** The caution of a part that carries a wheel. */
const wheelCaution = (): Finding =>
  found({
    code: 'use-wheel',
    level: 'caution',
    field: 'release',
    title: 'It carries a wheel: have a qualified person check it',
    says: 'These checks screen geometry and static strength only. Shock, ruts and fatigue are not covered. Local vehicle rules may forbid home-made wheel adapters.',
    source: {
      title: 'Usual caution',
      where: 'local code and licensed practice come first',
      certainty: 'common practice',
    },
  });

/** A remedy of the shared rules that this family has no field for. */
const withoutStudHoles = (finding: Finding): Finding => {
  if (finding.field !== 'pattern2.holes' || finding.remedies === undefined) return finding;
  const { remedies: _, ...rest } = finding;
  return rest;
};

/** All findings of the adapter. Strengths count with the thickness that machining leaves. */
export function checkWheelHubAdapter(part: Part, p: WheelHubAdapter, facts: Facts): readonly Finding[] {
  const answer = resolveHubAdapter(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const r = answer.value;
  const torque = wheelTorque(p);
  const load = torque === undefined ? undefined : { newtonMetres: torque, pullNewtons: 0 };
  const moment = sideMoment(p);
  const patterns = [
    { ...r.hub, thickness: r.underNuts, grade: p.hubGrade, boltUp: r.hub.pattern },
    { ...r.wheel, thickness: r.flange, grade: p.studGrade, boltUp: asFixed(r.wheel.pattern) },
  ];
  const findings = [
    ...checkMachinedBlank(p.release, 'wheel-hub adapter', 'wheel', adapterOrders(p, r, facts.format)),
    wheelCaution(),
    ...checkMaterialCaution(material.row),
    ...checkSmallHoles(part, facts, fieldOfHole),
    ...checkCutHoles([r.hub.pattern]),
    ...checkWebs(part, facts),
    ...patterns.flatMap(({ pattern, circle, parameters, thickness, grade, boltUp }) => [
      ...checkEdgeDistance(part, pattern, facts),
      ...checkSpacing(pattern, facts),
      ...checkBoltUp(boltUp, facts),
      ...checkTapping(pattern, part.thickness, facts),
      ...checkThreadEngagement(pattern, { material: material.row, thickness }, grade, facts),
      ...(load === undefined
        ? []
        : checkBoltLoads({ ...part, thickness }, pattern, load, material.row, grade, facts)),
      ...checkJointSlip(pattern, torque, grade, facts),
      ...checkJointOpening(pattern, moment, grade, facts),
      ...checkMeasuring(pattern, circle, parameters.boltCircle.measure.readings, facts),
    ]),
    ...(load === undefined ? [wheelLoadMissing()] : []),
    ...checkStudThread(p, r, facts),
    ...checkStudHold(p, r, facts),
    ...checkNutRoom(p, r, facts),
    ...checkNutsUnderWheel(p, r, facts),
    ...checkUnderNuts(p, r, facts),
    ...checkBoreFit(
      {
        way: p.pilotFit === 'H7' ? 'turned' : 'bore-after',
        finished: p.hubPilot.mm,
        cut: r.drawn,
        thickness: part.thickness,
      },
      facts,
    ),
    ...checkHubPilot(p, r.bore, facts),
    ...checkWheelPilot(p, r, facts),
    ...checkWheelSeat(p, r, facts),
    ...checkRunout(
      {
        what: 'wheel',
        rim: p.wheel.mm,
        limit: p.runout.mm,
        seat: { error: p.flatness.mm, circle: r.wheel.circle.diameter },
        hub: { error: p.hubRunout?.mm, circle: r.hub.circle.diameter },
      },
      facts,
    ),
    ...checkWheelRoom(p, { reach: r.reach, what: 'the adapter', disc: 0 }, facts),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...labelIsFaced(p.label),
    ...checkPlateSize(part, facts),
  ];
  return mergeNotChecked(remediesOfGroup(underFields(findings.map(withoutStudHoles), NAMES), p.pattern2));
}
