// The catalogue's contents, in the order in which a list shows them. A family has one line here.
import type { About } from './about.js';
import { adapterPlateAbout } from './adapter-plate/about.js';
import { bearingFlangeAbout } from './bearing-flange/about.js';
import { bearingSpacerAbout } from './bearing-spacer/about.js';
import { bentBracketAbout } from './bent-bracket/about.js';
import { cableStopAbout } from './cable-stop/about.js';
import { chainGuardAbout } from './chain-guard/about.js';
import { couponFitAbout } from './coupon-fit/about.js';
import { couponHolesAbout } from './coupon-holes/about.js';
import { couponKerfAbout } from './coupon-kerf/about.js';
import { couponPierceAbout } from './coupon-pierce/about.js';
import { couponSpeedAbout } from './coupon-speed/about.js';
import { discCarrierAbout } from './disc-carrier/about.js';
import { gussetAbout } from './gusset/about.js';
import { mountingPlateAbout } from './mounting-plate/about.js';
import { ownOutlineAbout } from './own-outline/about.js';
import { pedalArmAbout } from './pedal-arm/about.js';
import { pedalBaseAbout } from './pedal-base/about.js';
import { pivotBracketAbout } from './pivot-bracket/about.js';
import { ringSpacerAbout } from './ring-spacer/about.js';
import { slotTabJointAbout } from './slot-tab-joint/about.js';
import { sprocketBlankAbout } from './sprocket-blank/about.js';
import { sprocketPlateAbout } from './sprocket-plate/about.js';
import { tabAbout } from './tab/about.js';
import { tackJigAbout } from './tack-jig/about.js';
import { tensionerArmAbout } from './tensioner-arm/about.js';
import { tubeCapAbout } from './tube-cap/about.js';
import { wheelHubAdapterAbout } from './wheel-hub-adapter/about.js';

/** Wheels and chain, pedals and pivots, plates and guards, what joins them, outlines of one's own, coupons. */
const ABOUTS: readonly About[] = [
  adapterPlateAbout,
  sprocketPlateAbout,
  sprocketBlankAbout,
  ringSpacerAbout,
  bearingSpacerAbout,
  discCarrierAbout,
  wheelHubAdapterAbout,
  pedalArmAbout,
  pedalBaseAbout,
  pivotBracketAbout,
  cableStopAbout,
  tabAbout,
  gussetAbout,
  tubeCapAbout,
  bentBracketAbout,
  mountingPlateAbout,
  bearingFlangeAbout,
  tensionerArmAbout,
  chainGuardAbout,
  slotTabJointAbout,
  tackJigAbout,
  ownOutlineAbout,
  couponKerfAbout,
  couponPierceAbout,
  couponSpeedAbout,
  couponHolesAbout,
  couponFitAbout,
];

/** What is said of every family, whether it is loaded or not. */
export const listAbouts = (): readonly About[] => ABOUTS;
