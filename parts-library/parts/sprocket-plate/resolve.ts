// A sprocket plate resolved once: teeth, bolts, middle, lightening, for drawing, checks and print alike.
import { resolvePattern, type ResolvedPattern } from '../shared/pattern.js';
import { rememberResolved, type Resolved } from '../shared/resolved.js';
import { resolveLightening, type Lightening } from './lightening.js';
import { resolveMiddle, type Middle } from './middle.js';
import type { SprocketPlate } from './parameters.js';
import { resolveTeeth, type Teeth } from './teeth.js';

export interface Sprocket {
  readonly teeth: Teeth;
  readonly pattern: ResolvedPattern | undefined;
  readonly middle: Middle | undefined;
  /** Undefined when it was asked for and there is no room. */
  readonly lightening: Lightening | 'none' | undefined;
}

function resolveFresh(p: SprocketPlate): Resolved<Sprocket> {
  const teeth = resolveTeeth(p);
  if (!teeth.ok) return teeth;
  const pattern = p.bolted === 'yes' ? resolvePattern(p, 'pattern1') : undefined;
  if (pattern?.ok === false) return pattern;
  const middle = resolveMiddle(p);
  if (!middle.ok) return middle;
  const lightening = resolveLightening(p, teeth.value, pattern?.value, middle.value);
  if (!lightening.ok) return lightening;
  return {
    ok: true,
    value: {
      teeth: teeth.value,
      pattern: pattern?.value,
      middle: middle.value,
      lightening: lightening.value,
    },
  };
}

/** The same parameters are resolved once. */
export const resolveSprocket = rememberResolved(resolveFresh, 'teeth');
