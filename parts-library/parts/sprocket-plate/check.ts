// The rules of a sprocket plate, in the order in which they are read.
import {
  chainPull,
  checkBoltLoads,
  checkBoltUp,
  checkBoreFit,
  checkChainPull,
  checkChainRoom,
  checkEdgeDistance,
  checkFilletLeg,
  checkHeadRoom,
  checkHubSteel,
  checkHubWeld,
  checkKeyway,
  checkLabel,
  checkMaterialCaution,
  checkMeasuring,
  checkPlateSize,
  checkSeat,
  checkSmallHoles,
  checkSpacing,
  checkTapping,
  checkThreadEngagement,
  checkUse,
  checkWeldability,
  checkWebs,
  mergeNotChecked,
  type Facts,
  type HubBeside,
  type PullInput,
} from '../../checks/index.js';
import { boltEnvelope, findMaterial, type Material } from '../../handbook/index.js';
import type { CutFeature, Finding, Part } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import { underFields } from '../shared/bolted.js';
import { checkChainOnHand, checkWrap } from '../shared/sprocket/check-chain.js';
import { checkFewTeeth, checkWear } from './check-service.js';
import { checkCaliper, checkSeatRadius, checkTips, checkToothThickness } from './check-teeth.js';
import { middleField, weldLegOf } from './middle.js';
import type { SprocketPlate } from './parameters.js';
import { resolveSprocket, type Sprocket } from './resolve.js';
import { withoutTeeth, type Teeth } from './teeth.js';

/** What the shared rules call a field, and what it is called here. */
const NAMES: Readonly<Record<string, string>> = { edge: 'boltCircle', keyway: 'key' };

function pullOf(p: SprocketPlate, { chain }: Teeth): PullInput {
  return {
    chain,
    teeth: p.teeth,
    torque: p.torque?.value,
    gripMass: p.gripMass?.value,
    tyreDiameter: p.tyreDiameter?.mm,
    grip: p.grip.value,
  };
}

const fieldOfHole =
  (p: SprocketPlate) =>
  ({ id }: CutFeature): { readonly field: string } => ({
    field: id === 'centre' ? middleField(p) : id.startsWith('lightening') ? 'holeSize' : 'holes',
  });

function checkMiddle(
  p: SprocketPlate,
  { middle, teeth }: Sprocket,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  if (middle === undefined || middle.centre.way === 'none') return [];
  const { way, finished, drawn, hub } = middle.centre;
  const pull = chainPull(pullOf(p, teeth));
  const thickness = p.thickness.mm;
  const fit = checkBoreFit(
    { way, finished, cut: drawn, thickness, ...(hub === undefined ? {} : { hub }) },
    facts,
  );
  if (p.middle === 'keyed') {
    const system = p.key;
    return [
      ...underFields(fit, { bore: 'shaft' }),
      ...checkKeyway(
        { bore: finished, system, thickness, material, newtonMetres: pull?.newtonMetres },
        facts,
      ).map(
        // A sprocket's bore is made plain by choosing another middle.
        (finding) => ({ ...finding, remedies: [] }),
      ),
    ];
  }
  if (hub === undefined) return fit;
  const weld = {
    hub: hub.diameter,
    leg: weldLegOf(p, facts.format.unit),
    sides: p.weldSides,
    thickness,
    material,
  };
  const load =
    pull === undefined
      ? undefined
      : {
          newtonMetres: pull.newtonMetres,
          pullNewtons: pull.newtons,
          // The chain runs over the plate itself.
          offset: p.chainOffset?.mm ?? thickness / 2,
        };
  return [
    ...fit,
    ...checkWeldability(material),
    ...checkFilletLeg(weld, facts),
    ...checkHubWeld(weld, load, facts),
    ...checkHubSteel(p.hubSteel),
  ];
}

function checkBolts(
  part: Part,
  p: SprocketPlate,
  sprocket: Sprocket,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  const { pattern: resolved, middle, teeth } = sprocket;
  if (resolved === undefined) return [];
  const { pattern, circle } = resolved;
  const pull = chainPull(pullOf(p, teeth));
  const load =
    pull === undefined ? undefined : { newtonMetres: pull.newtonMetres, pullNewtons: pull.newtons };
  const hub = middle?.centre.welded === true ? middle.centre.hub : undefined;
  const beside: HubBeside | undefined =
    hub === undefined
      ? undefined
      : { hub: hub.diameter, leg: weldLegOf(p, facts.format.unit), sides: p.weldSides };
  return [
    ...checkEdgeDistance(part, pattern, facts),
    ...checkSpacing(pattern, facts),
    ...checkBoltUp(pattern, facts),
    ...checkTapping(pattern, p.thickness.mm, facts),
    ...checkThreadEngagement(pattern, { material, thickness: p.thickness.mm }, p.boltGrade, facts),
    ...checkBoltLoads(part, pattern, load, material, p.boltGrade, facts),
    ...(beside === undefined ? [] : checkSeat(pattern, beside, facts)),
    ...checkHeadRoom(pattern, beside, facts),
    ...checkMeasuring(pattern, circle, resolved.parameters.boltCircle.measure.readings, facts),
  ];
}

/** Bolt heads, and hub with its weld, under the chain's side plates. */
function checkBesideChain(
  p: SprocketPlate,
  { teeth, pattern, middle }: Sprocket,
  facts: Facts,
): readonly Finding[] {
  const drive = { chain: teeth.chain, teeth: p.teeth };
  const envelope = pattern === undefined ? undefined : boltEnvelope(pattern.pattern.thread);
  const head =
    pattern === undefined || envelope?.found !== true
      ? undefined
      : Math.max(...pattern.pattern.holes.map(({ at }) => Math.hypot(at.x, at.y))) +
        Math.max(envelope.row.acrossCorners.value, envelope.row.washerOutside.value) / 2;
  const hub = middle?.centre.hub;
  return [
    ...checkChainRoom(
      {
        ...drive,
        headReach: head,
        remedy: 'A smaller bolt circle, smaller bolts, or countersunk heads would do.',
      },
      facts,
    ),
    ...(hub === undefined
      ? []
      : checkChainRoom(
          {
            ...drive,
            reach: hub.diameter / 2 + weldLegOf(p, facts.format.unit),
            what: 'Hub and weld',
            field: 'hub',
            remedy: 'A smaller hub, more teeth, or a weld on the far face only would do.',
          },
          facts,
        )),
  ];
}

/** All findings of the sprocket. */
export function checkSprocketPlate(part: Part, p: SprocketPlate, facts: Facts): readonly Finding[] {
  const answer = resolveSprocket(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const sprocket = answer.value;
  const { teeth } = sprocket;
  const disc: Part = { ...part, features: withoutTeeth(part.features, teeth) };
  return underFields(
    mergeNotChecked([
      ...checkUse(p.use),
      ...checkMaterialCaution(material.row),
      ...checkToothThickness(p, teeth, facts),
      ...checkSeatRadius(teeth, facts),
      ...checkTips(teeth, facts),
      ...checkCaliper(p, teeth, facts),
      ...checkFewTeeth(p.teeth),
      ...checkWear(material.row, p.teeth, facts),
      ...checkChainOnHand(p, facts),
      ...checkWrap(p, teeth.chain, facts),
      ...checkChainPull(pullOf(p, teeth), facts),
      ...checkSmallHoles(part, facts, fieldOfHole(p)),
      ...checkWebs(disc, facts),
      ...checkBolts(disc, p, sprocket, material.row, facts),
      ...checkMiddle(p, sprocket, material.row, facts),
      ...checkBesideChain(p, sprocket, facts),
      ...checkLabel(
        part,
        p.labelHeight.mm,
        letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
        facts,
      ),
      ...checkPlateSize(part, facts),
    ]),
    NAMES,
  );
}
