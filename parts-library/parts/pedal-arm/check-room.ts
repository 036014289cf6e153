// Room between what moves and what stands: rod or cable beside the stop screws.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import { distanceBetweenPaths, type OpenPath, type Point } from '../../geometry/index.js';
import { findThread, type Source } from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { Motion } from './motion.js';
import type { PedalArm } from './parameters.js';

const SIDE_BY_SIDE: Source = {
  title: 'Room beside a moving rod',
  where: 'clevis cheeks about as wide as two pins, screw and nut about two threads wide',
  certainty: 'common practice',
};
/** Length of a stop screw beyond its tip that counts, mm. */
const SCREW_LENGTH = 30;

const line = (from: Point, to: Point): OpenPath => ({
  vertices: [
    { ...from, bulge: 0 },
    { ...to, bulge: 0 },
  ],
});

/** Each screw against the rod or cable at the end of the swing where the screw acts; both lie near the arm's plane. */
export function checkStopRoom(p: PedalArm, motion: Motion, facts: Facts): readonly Finding[] {
  const thread = findThread(p.stopScrew);
  if (!thread.found) return [];
  const wanted = thread.row.diameter + p.linkPin.mm;
  return motion.screws.flatMap(({ id, tip, away }): readonly Finding[] => {
    const state = id === 'rest' ? motion.rest : motion.atEnd;
    if (state === undefined) return [];
    const end = { x: tip.x + away.x * SCREW_LENGTH, y: tip.y + away.y * SCREW_LENGTH };
    const gap = distanceBetweenPaths(line(state.pin, state.seat), line(tip, end)).distance;
    const isTight = gap < wanted;
    return [
      found({
        code: 'stop-room',
        level: judge(['caution', isTight]),
        anchor: tip,
        field: 'stopRadius',
        title: `The ${id} stop stands ${facts.format.length(gap)} beside the ${motion.link.kind}, ${facts.format.length(wanted)} wanted`,
        says: isTight
          ? 'Screw and clevis meet where they lie in one plane. Stops nearer to the pivot or farther out, or a tab on the other side would do.'
          : 'Clevis and screw pass each other.',
        value: quantity(gap, 'mm'),
        limit: quantity(wanted, 'mm'),
        formula: `${digits(thread.row.diameter)} + ${digits(p.linkPin.mm)} = ${digits(wanted)}`,
        source: SIDE_BY_SIDE,
      }),
    ];
  });
}
