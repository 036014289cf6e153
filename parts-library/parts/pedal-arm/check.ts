// The rules of a pedal arm, in the order in which they are read.
import {
  checkMaterialCaution,
  checkSmallHoles,
  checkUse,
  checkWebs,
  found,
  judge,
  quantity,
  type Facts,
} from '../../checks/index.js';
import { findMaterial, throttleSprings, type Source } from '../../handbook/index.js';
import { isMark, type Finding, type Part } from '../../model/index.js';
import { checkBends } from './check-bends.js';
import { checkMotion } from './check-motion.js';
import { checkPivot } from './check-pivot.js';
import { checkStopRoom } from './check-room.js';
import { checkStrength } from './check-strength.js';
import { layoutOf, springsOf, type Layout } from './layout.js';
import { motionOf } from './motion.js';
import type { PedalArm } from './parameters.js';
import { loadsOf } from './strength.js';

const PRACTICE: Source = {
  title: 'Usual caution',
  where: 'local code and licensed practice come first',
  certainty: 'common practice',
};
const STARTS: Source = {
  title: 'Starts of the torch',
  where: 'each mark and each dimple is a start and wears the nozzle as one',
  certainty: 'common practice',
};

/** What hangs on the pedal. */
function checkPedalUse(p: PedalArm): readonly Finding[] {
  if (p.use === 'brake') return checkUse('brake');
  return [
    found({
      code: `use-${p.use}`,
      level: 'caution',
      field: 'use',
      title:
        p.use === 'throttle'
          ? 'Throttle part: a pedal that sticks runs the cart away; have a qualified person check it'
          : 'Clutch part: have a qualified person check it',
      says:
        p.use === 'throttle'
          ? 'It must close by itself from anywhere in its swing, with either spring alone, boots and mud included; and the cart needs a way to cut the drive that is not the pedal.'
          : 'A clutch that does not let go moves the cart in gear. These checks screen geometry and static strength only.',
      source: PRACTICE,
    }),
  ];
}

function checkSprings(p: PedalArm, layout: Layout): readonly Finding[] {
  const count = springsOf(p);
  const [first] = layout.springs;
  const anchor = first?.at;
  const wanted = p.use === 'throttle' ? throttleSprings.value : 1;
  return [
    found({
      code: 'return-springs',
      level: judge(
        ['stop', p.use === 'throttle' && count === 0],
        ['caution', p.use === 'throttle' && count < wanted],
        ['note', count < wanted],
      ),
      field: 'springs',
      ...(anchor === undefined ? {} : { anchor }),
      title:
        p.use === 'throttle'
          ? `${count === 0 ? 'No return spring' : `${count} return spring${count > 1 ? 's' : ''}`} on the throttle, two wanted`
          : count === 0
            ? 'No return-spring hole'
            : `Return-spring holes: ${count}`,
      says:
        p.use === 'throttle'
          ? count < wanted
            ? 'When the only one breaks, the throttle stays where it is. Two, each strong enough alone, hooked in holes of their own.'
            : 'Each must close the throttle alone: try it with one unhooked, then the other.'
          : count === 0
            ? 'The pedal comes back by its cylinder or cable alone.'
            : 'The spring holds the arm on its rest stop.',
      value: quantity(count, '1'),
      limit: quantity(wanted, '1'),
      source: throttleSprings.source,
      ...(p.use === 'throttle' && count < wanted
        ? {
            remedies: [
              { says: 'Make two holes', change: [{ op: 'add' as const, path: '/springs', value: 2 }] },
            ],
          }
        : {}),
    }),
  ];
}

function checkDimples(part: Part, p: PedalArm): readonly Finding[] {
  if (p.dimples === 'no') return [];
  const marks = part.features.filter((feature) => isMark(feature) && feature.id.startsWith('dimple.')).length;
  return [
    found({
      code: 'dimples',
      level: 'note',
      field: p.pad === 'folded' ? 'dimpleSpacing' : 'pad',
      title:
        marks === 0
          ? 'No grip dimples: the pad is not folded from this plate'
          : `${marks} grip dimples are ${marks} starts of the torch`,
      says:
        marks === 0
          ? 'They go on a folded pad. On a separate pad plate punch them, or weld rows of beads.'
          : 'Or punch them by hand, weld a few beads across, or stick grip tape on.',
      value: quantity(marks, '1'),
      source: STARTS,
    }),
  ];
}

/** The parameter that gives more metal beside a hole. */
function webField({ subject: { featureId = '' } }: Finding, { horn }: Layout): string {
  if (featureId.startsWith('pin.')) return horn === undefined ? 'linkRadius' : 'eye';
  return featureId.startsWith('spring.') ? 'springAt' : 'bossEdge';
}

/** All findings of the arm. */
export function checkPedalArm(part: Part, p: PedalArm, facts: Facts): readonly Finding[] {
  const material = findMaterial(p.material);
  if (!material.found) return [];
  const layout = layoutOf(p);
  const motion = motionOf(p, layout);
  const loads = loadsOf(p, layout, motion, material.row.modulusMegapascals);
  return [
    ...checkPedalUse(p),
    ...checkMotion(p, motion, facts),
    ...checkStopRoom(p, motion, facts),
    ...checkSprings(p, layout),
    ...checkStrength(part, p, layout, motion, material.row, facts),
    ...checkPivot(p, layout, loads, material.row, facts),
    ...checkBends(part, p, layout, material.row, facts),
    ...checkDimples(part, p),
    ...checkMaterialCaution(material.row),
    ...checkWebs(part, facts).map((finding) => ({ ...finding, field: webField(finding, layout) })),
    ...checkSmallHoles(part, facts, ({ id }) =>
      id === 'pivot'
        ? { field: 'tubeOutside' }
        : {
            field: 'linkMade',
            remedies: [
              {
                says: 'Mark the pin holes, drill and ream them',
                change: [{ op: 'add', path: '/linkMade', value: 'ream' }],
              },
            ],
          },
    ),
  ];
}
