// Kits: several parts from one set of numbers.
import type { Kit } from './kit.js';
import { pedalSet } from './pedal-set/index.js';
import { sprocketCarrier } from './sprocket-carrier/index.js';

export { defineKit } from './kit.js';
export type { Joint, Kit, KitContext, KitDeclaration, KitReading, Member } from './kit.js';

const KITS: readonly Kit[] = [sprocketCarrier, pedalSet];

/** Every kit, in the order in which a list shows them. */
export const listKits = (): readonly Kit[] => KITS;

/** The kit of that id, or undefined. */
export const findKit = (id: string): Kit | undefined => KITS.find((kit) => kit.id === id);
