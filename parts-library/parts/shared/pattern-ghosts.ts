// Ghosts of a bolt pattern: its circle, what seats on its holes, and the socket that turns it.
import { boltEnvelope } from '../../handbook/index.js';
import type { Ghost } from '../../model/index.js';
import type { ResolvedPattern } from './pattern.js';

const MIDDLE = { x: 0, y: 0 };

/** Circle, heads or washers of all bolts, thread of tapped ones, one socket. */
export function patternGhosts(patterns: readonly ResolvedPattern[]): readonly Ghost[] {
  return patterns.flatMap(({ pattern }): readonly Ghost[] => {
    const envelope = boltEnvelope(pattern.thread);
    const circle: Ghost = {
      id: `${pattern.id}.circle`,
      kind: 'bolt-circle',
      shape: { circle: { centre: MIDDLE, radius: pattern.circle / 2 } },
    };
    if (!envelope.found) return [circle];
    const { washerOutside, acrossCorners, socketOutside } = envelope.row;
    const around = pattern.holes.flatMap(({ featureId, at }): readonly Ghost[] => [
      {
        id: `${featureId}.head`,
        kind: 'bolt-head',
        shape: { circle: { centre: at, radius: Math.max(washerOutside.value, acrossCorners.value) / 2 } },
      },
      ...(pattern.made === 'tapped'
        ? [
            {
              id: `${featureId}.thread`,
              kind: 'thread' as const,
              shape: { circle: { centre: at, radius: pattern.thread.diameter / 2 } },
            },
          ]
        : []),
    ]);
    const first = pattern.holes[0];
    const socket: readonly Ghost[] =
      first === undefined
        ? []
        : [
            {
              id: `${pattern.id}.socket`,
              kind: 'socket',
              label: 'socket',
              shape: { circle: { centre: first.at, radius: socketOutside.value / 2 } },
            },
          ];
    return [circle, ...around, ...socket];
  });
}
