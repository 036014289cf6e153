// The sprocket plate: teeth for single-strand roller chain, bolted or welded on.
import { defineFamily } from '../family.js';
import { sprocketPlateAbout } from './about.js';
import { checkSprocketPlate } from './check.js';
import { sprocketPlateDerived } from './derived.js';
import { sprocketPlateDimensions } from './dimensions.js';
import { drawSprocketPlate } from './draw.js';
import { sprocketPlateGhosts } from './ghosts.js';
import { sprocketPlateParameters } from './parameters.js';
import { sprocketPlateHardware, sprocketPlateSteps } from './steps.js';

export const sprocketPlate = defineFamily({
  ...sprocketPlateAbout,
  parameters: sprocketPlateParameters,
  draw: drawSprocketPlate,
  check: checkSprocketPlate,
  dimensions: sprocketPlateDimensions,
  ghosts: sprocketPlateGhosts,
  derived: sprocketPlateDerived,
  steps: sprocketPlateSteps,
  hardware: sprocketPlateHardware,
});
