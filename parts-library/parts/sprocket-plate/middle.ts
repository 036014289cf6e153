// The middle of a sprocket: its fields as the shared centre understands them.
import { leastFilletLeg } from '../../handbook/index.js';
import type { CutFeature } from '../../model/index.js';
import type { Unit } from '../../units/index.js';
import { drawCentre, resolveCentre, type Centre, type WantedCentre } from '../shared/centre.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import type { SprocketPlate } from './parameters.js';

export interface Middle {
  readonly centre: Centre;
  readonly feature: CutFeature;
}

/** What the shared centre calls a field, and what it is called here. */
const FIELDS: Readonly<Record<string, string>> = { keyway: 'shaft' };

function wanted(p: SprocketPlate): WantedCentre {
  const { grind, machiningAllowance } = p;
  const rest = { grind, machiningAllowance, keyway: 'none' } as const;
  switch (p.middle) {
    case 'hub':
      return { ...rest, centre: 'slip-to-weld', hub: p.hub, fit: p.fit };
    case 'bored':
      return { ...rest, centre: 'bore-after', bore: p.bore };
    case 'keyed':
      return { ...rest, centre: 'plain', bore: p.shaft, keyway: p.key };
    case 'none':
      return { ...rest, centre: 'none' };
    default:
      return { ...rest, centre: 'plain', bore: p.bore };
  }
}

/** The middle, none when there is none. */
export function resolveMiddle(p: SprocketPlate): Resolved<Middle | undefined> {
  const want = wanted(p);
  const centre = resolveCentre(want);
  if (!centre.ok) return refusal(FIELDS[centre.field] ?? centre.field, centre.says);
  if (centre.value === undefined) return { ok: true, value: undefined };
  const feature = drawCentre(want, centre.value);
  if (!feature.ok) return refusal(FIELDS[feature.field] ?? feature.field, feature.says);
  return { ok: true, value: { centre: centre.value, feature: feature.value } };
}

/** Leg of the fillet round a weld-on hub, mm: as given, or the least for this thickness. */
export const weldLegOf = (p: SprocketPlate, unit: Unit): number =>
  p.weldLeg?.mm ?? leastFilletLeg(p.thickness.mm, unit).leg;

/** How far from the middle hub and weld, or the bore, reach, mm. */
export function middleReach(p: SprocketPlate, middle: Middle | undefined, unit: Unit): number {
  if (middle === undefined) return 0;
  const { hub, finished, welded } = middle.centre;
  return hub !== undefined && welded ? hub.diameter / 2 + weldLegOf(p, unit) : finished / 2;
}

const MIDDLE_FIELDS = { bore: 'bore', bored: 'bore', keyed: 'shaft', hub: 'hub', none: 'middle' } as const;

/** The parameter that sets the size of the middle. */
export const middleField = (p: SprocketPlate): string => MIDDLE_FIELDS[p.middle];
