// The rules of a sprocket blank, in the order in which they are read.
import {
  chainPull,
  checkBoltLoads,
  checkBoltUp,
  checkBoreFit,
  checkChainPull,
  checkChainRoom,
  checkEdgeDistance,
  checkHeadRoom,
  checkLabel,
  checkMaterialCaution,
  checkMeasuring,
  checkPlateSize,
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
import type { Finding, Part } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import { checkChainOnHand } from '../shared/sprocket/check-chain.js';
import { checkCentring, checkChainLine, checkSeatUnderSprocket } from './check-sprocket.js';
import type { SprocketBlank } from './parameters.js';
import { resolveBlank } from './resolve.js';

/** All findings of the blank. */
export function checkSprocketBlank(part: Part, p: SprocketBlank, facts: Facts): readonly Finding[] {
  const answer = resolveBlank(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const blank = answer.value;
  const { pattern, circle, parameters } = blank.pattern;
  const drive = { chain: blank.chain, teeth: p.teeth };
  const input = {
    ...drive,
    torque: p.torque?.value,
    gripMass: p.gripMass?.value,
    tyreDiameter: p.tyreDiameter?.mm,
    grip: p.grip.value,
  };
  const pull = chainPull(input);
  const load =
    pull === undefined ? undefined : { newtonMetres: pull.newtonMetres, pullNewtons: pull.newtons };
  const thickness = p.thickness.mm;
  return mergeNotChecked([
    ...checkUse(p.use),
    ...checkMaterialCaution(material.row),
    ...checkChainOnHand(p, facts),
    ...checkChainRoom({ ...drive, reach: blank.outside / 2, headReach: blank.headReach }, facts),
    ...checkSeatUnderSprocket(p, blank, facts),
    ...checkCentring(p, blank, facts),
    ...checkChainLine(p, facts),
    ...checkSmallHoles(part, facts, ({ id }) => ({ field: id === 'centre' ? 'bore' : 'holes' })),
    ...checkWebs(part, facts),
    ...checkEdgeDistance(part, pattern, facts),
    ...checkSpacing(pattern, facts),
    ...checkBoltUp(pattern, facts),
    ...checkTapping(pattern, thickness, facts),
    ...checkThreadEngagement(pattern, { material: material.row, thickness }, p.boltGrade, facts),
    ...checkBoltLoads(part, pattern, load, material.row, p.boltGrade, facts),
    ...checkHeadRoom(pattern, undefined, facts),
    ...checkMeasuring(pattern, circle, parameters.boltCircle.measure.readings, facts),
    ...(blank.pilot === undefined
      ? []
      : checkBoreFit(
          {
            way: p.pilot === 'bored' ? 'bore-after' : 'plain',
            finished: blank.pilot.finished,
            cut: blank.pilot.drawn,
            thickness,
          },
          facts,
        )),
    ...checkChainPull(input, facts),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...checkPlateSize(part, facts),
  ]);
}
