// The kits, all at hand, as the server, the command line and tests use them. The page takes `catalogue-on-demand.ts` in
// its place. Adding a kit is adding its folder, and one line here, there and in `abouts.ts`.
import type { Kit } from './kit.js';
import { hubPair } from './hub-pair/index.js';
import { pedalSet } from './pedal-set/index.js';
import { sprocketCarrier } from './sprocket-carrier/index.js';

const KITS: readonly Kit[] = [sprocketCarrier, pedalSet, hubPair];

/** Every kit that is loaded, in the order in which a list shows them. */
export const listKits = (): readonly Kit[] => KITS;

/** The kit of that id, or undefined when there is none or it is not loaded. */
export const findKit = (id: string): Kit | undefined => KITS.find((kit) => kit.id === id);

/** Loads kits that are not loaded yet; ids that are not known are passed over. */
export const loadKits = async (_ids: readonly string[]): Promise<void> => {};
