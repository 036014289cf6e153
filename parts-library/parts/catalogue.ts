// The catalogue of part families with all of them at hand, as the server, the command line and tests use it. The page
// takes `catalogue-on-demand.ts` in its place. Adding a family is adding its folder, and one line here, there and in
// `abouts.ts`.
import { adapterPlate } from './adapter-plate/index.js';
import { bearingFlange } from './bearing-flange/index.js';
import { bearingSpacer } from './bearing-spacer/index.js';
import { bentBracket } from './bent-bracket/index.js';
import { cableStop } from './cable-stop/index.js';
import { chainGuard } from './chain-guard/index.js';
import { couponFit } from './coupon-fit/index.js';
import { couponHoles } from './coupon-holes/index.js';
import { couponKerf } from './coupon-kerf/index.js';
import { couponPierce } from './coupon-pierce/index.js';
import { couponSpeed } from './coupon-speed/index.js';
import { discCarrier } from './disc-carrier/index.js';
import { gusset } from './gusset/index.js';
import { mountingPlate } from './mounting-plate/index.js';
import { ownOutline } from './own-outline/index.js';
import { pedalArm } from './pedal-arm/index.js';
import { pedalBase } from './pedal-base/index.js';
import { pivotBracket } from './pivot-bracket/index.js';
import { ringSpacer } from './ring-spacer/index.js';
import { slotTabJoint } from './slot-tab-joint/index.js';
import { sprocketBlank } from './sprocket-blank/index.js';
import { sprocketPlate } from './sprocket-plate/index.js';
import { tab } from './tab/index.js';
import { tackJig } from './tack-jig/index.js';
import { tensionerArm } from './tensioner-arm/index.js';
import { tubeCap } from './tube-cap/index.js';
import { wheelHubAdapter } from './wheel-hub-adapter/index.js';
import type { Family } from './family.js';

const FAMILIES: readonly Family[] = [
  adapterPlate,
  sprocketPlate,
  sprocketBlank,
  ringSpacer,
  bearingSpacer,
  discCarrier,
  wheelHubAdapter,
  pedalArm,
  pedalBase,
  pivotBracket,
  cableStop,
  tab,
  gusset,
  tubeCap,
  bentBracket,
  mountingPlate,
  bearingFlange,
  tensionerArm,
  chainGuard,
  slotTabJoint,
  tackJig,
  ownOutline,
  couponKerf,
  couponPierce,
  couponSpeed,
  couponHoles,
  couponFit,
];

/** Every family that is loaded, in the order in which a list shows them. */
export const listFamilies = (): readonly Family[] => FAMILIES;

/** The family of that id, or undefined when there is none or it is not loaded. */
export const findFamily = (id: string): Family | undefined => FAMILIES.find((family) => family.id === id);

/** Loads families that are not loaded yet; ids that are not known are passed over. */
export const loadFamilies = async (_ids: readonly string[]): Promise<void> => {};
