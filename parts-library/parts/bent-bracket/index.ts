// The bent bracket: a strip bent to an L, U, Z or hat, with holes in its legs.
import type { Facts } from '../../checks/index.js';
import type { HardwareItem, Part } from '../../model/index.js';
import { defineFamily } from '../family.js';
import { boltItems } from '../shared/bolted.js';
import { bentBracketAbout } from './about.js';
import { checkBentBracket } from './check.js';
import { drawBentBracket } from './draw.js';
import { bentBracketParameters, type BentBracket } from './parameters.js';
import { bentBracketDerived, bentBracketDimensions, bentBracketGhosts, bentBracketSteps } from './print.js';

/** A bolt for each hole; what the bracket is bolted to is taken to be as thick as the bracket, and said to be. */
function hardware(part: Part, p: BentBracket, { format }: Facts): readonly HardwareItem[] {
  const count = part.features.filter(({ id }) => id.includes('.hole.')).length;
  return boltItems({ id: 'holes', bolt: p.bolt, count, grip: 2 * part.thickness }, format).map((item) =>
    item.kind === 'bolt'
      ? {
          ...item,
          says: `${item.says ?? ''} The other side is taken to be ${format.length(part.thickness)} thick: measure it.`,
        }
      : item,
  );
}

export const bentBracket = defineFamily({
  ...bentBracketAbout,
  parameters: bentBracketParameters,
  draw: drawBentBracket,
  check: checkBentBracket,
  dimensions: bentBracketDimensions,
  ghosts: bentBracketGhosts,
  derived: bentBracketDerived,
  steps: bentBracketSteps,
  hardware,
});
