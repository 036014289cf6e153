// The handbook: published tables and formulas of the trade, each with its citation and certainty.

export * from './source.js';
export type { Found, Lookup, NotFound } from './lookup.js';
export {
  drillForPercent,
  findThread,
  listThreads,
  percentOfThread,
  percentThreadConvention,
} from './threads.js';
export type { Thread, ThreadField, ThreadSystem } from './threads.js';
export { findChain, listChains, serviceLoad } from './chain.js';
export type { Chain, ChainField, ChainStandard, ServiceLoad } from './chain.js';
export { findMaterial, kilogramsPerSquareMetre, listMaterials, strengthAt } from './materials.js';
export type { Material, MaterialFamily, MaterialField, StrengthBand } from './materials.js';
export { bestReading, boltCircleFrom, boltHoles, chordFactor, chordRule } from './bolt-circle.js';
export type { BestReading, BoltCircle, BoltCircleAnswer } from './bolt-circle.js';
export type { Contribution } from './bolt-circle-combine.js';
export { oddClocking } from './bolt-circle-centres.js';
export type { BoltCircleProblem } from './bolt-circle-problem.js';
export { fitCircle } from './circle-fit.js';
export type { FittedCircle, SeatedHole } from './circle-fit.js';
export { usualCircles, usualNear } from './usual-circles.js';
export type { NearUsual, UsualCircle } from './usual-circles.js';
export { listDrills, nearestDrill } from './drills.js';
export type { Drill } from './drills.js';
export { clearanceHole } from './clearance.js';
export type { ClearanceFit, ClearanceHole } from './clearance.js';
export { boltEnvelope, boltHead, countersinkDepth, socketOutside } from './heads.js';
export type { BoltEnvelope, BoltHead, HeadField } from './heads.js';
export { boltLength } from './bolt-length.js';
export type { BoltLength } from './bolt-length.js';
export {
  idlerForce,
  IDLER_PITCHES_AWAY,
  idlerRules,
  idlerRun,
  idlerSource,
  IDLER_TEETH_IN_MESH,
} from './idler.js';
export type { IdlerQuestion, IdlerRun } from './idler.js';
export { weldAngle, weldAngleSource } from './weld-tolerance.js';
export type { WeldClass } from './weld-tolerance.js';
export { reachDistance, reachSource, widestOpening } from './reach-through.js';
export type { OpeningShape } from './reach-through.js';
export { jointFriction, slipLoad } from './slip.js';
export type { SlipLoad } from './slip.js';
export { findGrade, listGrades } from './bolt-grades.js';
export type { BoltGrade, GradeName } from './bolt-grades.js';
export { boltShear, breakingLoad, nutFactor, preload, proofLoad, tighteningTorque } from './bolt-strength.js';
export type { BoltShear } from './bolt-strength.js';
export { threadLimits } from './thread-limits.js';
export type { ThreadLimits } from './thread-limits.js';
export { equalStrengthEngagement, shearAreas, shearOverTensile, stripStrength } from './thread-strip.js';
export type { ShearAreas, StripStrength } from './thread-strip.js';
export {
  isoSprocketFormulas,
  maxHubDiameter,
  outsideDiameter,
  pitchDiameter,
  plateClearance,
  sidePlateCircle,
  sprocketDiameters,
  sprocketFormulas,
  sweptDiameter,
} from './sprocket.js';
export type { SprocketDiameters } from './sprocket.js';
export { ansiToothForm, ansiToothSource, isoToothGap } from './tooth-form.js';
export type { AnsiToothForm, IsoToothGap, ToothQuestion } from './tooth-form.js';
export { toothThickness } from './tooth-thickness.js';
export type { ToothThickness } from './tooth-thickness.js';
export { toothRange } from './tooth-range.js';
export type { ToothRange } from './tooth-range.js';
export { rootLimits } from './root-limits.js';
export type { RootLimits } from './root-limits.js';
export {
  centreDistance,
  chainLength,
  chainLengthApprox,
  chainLengthSource,
  wrapDegrees,
} from './chain-drive.js';
export {
  centresSource,
  chordalSource,
  chordalVariation,
  evenLinksSource,
  FEWEST_TEETH,
  LEAST_WRAP,
  SMOOTH_TEETH,
  USUAL_CENTRES,
  wrapSource,
} from './chain-rules.js';
export {
  chainSagSource,
  chainSlackSource,
  excessOf,
  idlerTravel,
  movementOf,
  sagOf,
  SLACK,
} from './chain-slack.js';
export {
  chainElongation,
  chainWearSource,
  PITCHES_MEASURED,
  wearLimit,
  type WearLimit,
} from './chain-wear.js';
export {
  drivenLoad,
  gradeByForce,
  gradeByGrip,
  gradeForce,
  gradeSource,
  gripGradeSource,
  slopeOf,
  tipBackGrade,
  WALL,
  type DrivenLoad,
} from './gradeability.js';
export {
  findGround,
  gripSource,
  listGrounds,
  rollingSource,
  type Ground,
  type GroundName,
} from './ground.js';
export { roadSpeed, roadSpeedSource, rollingRadius, rollingRadiusSource } from './road.js';
export { listThicknesses, nearestThickness } from './thicknesses.js';
export type { StockThickness, ThicknessSystem } from './thicknesses.js';
export {
  floorEdgeDistance,
  goodEdgeDistance,
  goodWeb,
  holeSpacing,
  maxSpacing,
  minEdgeDistance,
  minWeb,
} from './edge-distance.js';
export { bearingSpacer, bearingSpacerExcess, bearingSpacerSource } from './bearing-spacer.js';
export type { SpacerLength } from './bearing-spacer.js';
export { bearing, clearToEdge } from './bearing.js';
export { bearingSeat } from './bearing-seat.js';
export type { BearingSeat, SeatFit } from './bearing-seat.js';
export type { Bearing, BearingQuestion } from './bearing.js';
export {
  e70Megapascals,
  filletStrength,
  largestFilletLeg,
  leastFilletLeg,
  leastFilletLength,
  throatOverLeg,
} from './fillet-weld.js';
export type { FilletLeg, FilletStrength } from './fillet-weld.js';
export { allowableWeldShear, hubWeldStress } from './hub-weld.js';
export type { HubWeld, HubWeldQuestion } from './hub-weld.js';
export { findKey, keyseatControl, keyStress } from './keys.js';
export type { Key, KeyStress } from './keys.js';
export { fitClearance, fitLimits } from './fits.js';
export type { FitClearance, FitLimits, HoleClass, ShaftClass, ToleranceClass } from './fits.js';
export { cutTolerance, perpendicularity } from './cut-tolerance.js';
export type { CutClass, LeanRange } from './cut-tolerance.js';
export { generalTolerance } from './general-tolerance.js';
export type { GeneralClass } from './general-tolerance.js';
export {
  airBendK,
  bendAllowance,
  bendDeduction,
  bendSource,
  holeToBend,
  leastBendRadius,
  minFlange,
  outsideSetback,
  vOpening,
} from './bending.js';
export type { BendRadius, Temper } from './bending.js';
export { netSection } from './net-section.js';
export type { NetSection, NetSectionQuestion } from './net-section.js';
export { weldLine } from './weld-line.js';
export type { WeldLine, WeldLineQuestion } from './weld-line.js';
export {
  forwardStopSource,
  freePlayRule,
  leverSource,
  linePressure,
  pedalFactor,
  pedalForce,
  slendernessLimit,
  throttleSprings,
  usualBrakeRatio,
} from './lever.js';
export type { PedalForce } from './lever.js';
export {
  combinedStress,
  deflectionSource,
  eyeSource,
  holeConcentration,
  leastLeverHeight,
  leverDeflection,
  leverStress,
  sidewaysStress,
  taperedDeflection,
  twistSource,
  twistStress,
} from './lever-stress.js';
export type { LeverBeam, LeverSection, LeverSlice, LeverStress } from './lever-stress.js';
export { leverOver, linkAt, linkageSource, swingForTravel } from './linkage.js';
export type { LeverRange, Linkage, LinkState } from './linkage.js';
export { freeEdgeLimit } from './free-edge.js';
export { basePlateThickness } from './base-plate.js';
export type { BasePlateQuestion } from './base-plate.js';
