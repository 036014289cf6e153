// Cut plans: kerf, lead-ins, order, direction, and the figures of a plan and of a part.
export type * from './types.js';
export { figuresOf } from './figures.js';
export { OPENING_LEAD_DEGREES, OUTLINE_LEAD_DEGREES } from './lead-in.js';
export { massOf, netArea, perimeterOf } from './measures.js';
export { compareIds, cutOrder } from './order.js';
export { planCuts } from './plan-cuts.js';
export { CutSettingsError } from './settings.js';
