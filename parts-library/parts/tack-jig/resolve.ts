// A tack jig worked out once.
import type { Feature } from '../../model/index.js';
import { refuseStray } from '../shared/finish-part.js';
import { rememberResolved, type Resolved } from '../shared/resolved.js';
import { bedOf, type Bed } from './bed.js';
import type { TackJig } from './parameters.js';
import { squareOf, type Square } from './square.js';

export interface ResolvedJig {
  readonly bed?: Bed;
  readonly square?: Square;
  readonly features: readonly Feature[];
}

function resolveFresh(p: TackJig): Resolved<ResolvedJig> {
  if (p.kind === 'square') {
    const square = squareOf(p);
    return square.ok
      ? { ok: true, value: { square: square.value, features: square.value.features } }
      : square;
  }
  const bed = bedOf(p);
  if (!bed.ok) return bed;
  const { features } = bed.value;
  const [outline] = features;
  const stray =
    outline?.purpose === 'outline'
      ? refuseStray(outline.contour, features.slice(1), ({ id }) =>
          id === 'weld.opening' ? 'weldRoom' : id.startsWith('strap') ? 'clampHoles' : 'stop',
        )
      : undefined;
  return stray ?? { ok: true, value: { bed: bed.value, features } };
}

/** Works a jig out; the same parameters object once. */
export const resolveJig = rememberResolved(resolveFresh, 'corner');
