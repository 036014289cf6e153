// The kits there are, in the order in which a list shows them. A kit has one line here.
import type { About } from '../parts/index.js';
import { hubPairAbout } from './hub-pair/about.js';
import { pedalSetAbout } from './pedal-set/about.js';
import { sprocketCarrierAbout } from './sprocket-carrier/about.js';

const ABOUTS: readonly About[] = [sprocketCarrierAbout, pedalSetAbout, hubPairAbout];

/** What is said of every kit, whether it is loaded or not. */
export const listKitAbouts = (): readonly About[] => ABOUTS;
