// Ghosts of what stands round a part on a wheel's hub: rings that turn with it, and caliper and rim to one side.
import type { Ghost } from '../../model/index.js';
import type { Entry } from '../fields/index.js';

/** A whole ring about the axle; none where its radius is not known. */
export const ringGhost = (
  id: string,
  kind: Ghost['kind'],
  radius: number | undefined,
  label: string,
): readonly Ghost[] =>
  radius === undefined ? [] : [{ id, kind, label, shape: { circle: { centre: { x: 0, y: 0 }, radius } } }];

/** Half the angle over which caliper and rim are shown, degrees: a caliper sits at one place. */
const HALF_SECTOR = 24;

/** An arc about the axle round a direction, degrees; none where its radius is not known. */
export function arcGhost(
  id: string,
  radius: number | undefined,
  label: string,
  towards = 0,
): readonly Ghost[] {
  if (radius === undefined) return [];
  const half = (HALF_SECTOR * Math.PI) / 180;
  const middle = (towards * Math.PI) / 180;
  const at = (radians: number) => ({ x: radius * Math.cos(radians), y: radius * Math.sin(radians) });
  return [
    {
      id,
      kind: 'mating-part',
      label,
      shape: {
        path: {
          vertices: [
            { ...at(middle - half), bulge: Math.tan(half / 2) },
            { ...at(middle + half), bulge: 0 },
          ],
        },
      },
    },
  ];
}

/** Caliper and rim, as arcs on the right. */
export function roomGhosts(p: {
  readonly caliperInner?: Entry | undefined;
  readonly caliperOuter?: Entry | undefined;
  readonly rim?: Entry | undefined;
}): readonly Ghost[] {
  return [
    ...arcGhost('caliper.inner', p.caliperInner?.mm, 'caliper, nearest'),
    ...arcGhost('caliper.outer', p.caliperOuter?.mm, 'caliper, farthest'),
    ...arcGhost('rim', p.rim?.mm, 'rim'),
  ];
}
