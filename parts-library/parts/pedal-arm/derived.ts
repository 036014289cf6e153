// What follows from what was typed: swing, ratio, stop-screw places, pressure, give.
import { findMaterial, linePressure } from '../../handbook/index.js';
import type { Derived, Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { layoutOf } from './layout.js';
import { motionOf, ratioFor } from './motion.js';
import type { PedalArm } from './parameters.js';
import { loadsOf } from './strength.js';

const angle = (degrees: number): string => `${Number(degrees.toFixed(1))}°`;

export function pedalArmDerived(_part: Part, p: PedalArm, { format }: DrawContext): readonly Derived[] {
  const layout = layoutOf(p);
  const motion = motionOf(p, layout);
  const { lever, link } = motion;
  const { length, bare, force, stress } = format;
  const material = findMaterial(p.material);
  const loads = material.found ? loadsOf(p, layout, motion, material.row.modulusMegapascals) : undefined;
  const ratios = [lever.atRest, lever.least, lever.most].map((one) => ratioFor(p, one));
  const [atRest, most, least] = ratios;
  const swing: readonly Derived[] =
    motion.full === undefined
      ? []
      : [
          {
            id: 'swing',
            field: 'travel',
            title: 'swing',
            value: { amount: motion.end, unit: 'degrees' },
            text: `${angle(motion.end)} for ${length(motion.travel + p.freePlay.mm)} of ${link.kind}; pad travels ${length(motion.padTravel)}`,
          },
        ];
  const ratio: readonly Derived[] =
    atRest === undefined || most === undefined || least === undefined
      ? []
      : [
          {
            id: 'ratio',
            field: 'linkRadius',
            title: 'lever ratio',
            value: { amount: atRest, unit: '1' },
            text: `${atRest.toFixed(2)} to 1 at rest, ${least.toFixed(2)} to ${most.toFixed(2)} over the swing`,
          },
        ];
  const pressure: readonly Derived[] =
    link.kind !== 'rod' || atRest === undefined
      ? []
      : [
          {
            id: 'pressure',
            field: 'bore',
            title: 'line pressure',
            value: {
              amount: linePressure(p.footForce.value * atRest, p.bore.mm, p.cylinders === 'two' ? 2 : 1)
                .value,
              unit: 'MPa',
            },
            text: `${stress(linePressure(p.footForce.value * atRest, p.bore.mm, p.cylinders === 'two' ? 2 : 1).value)} at ${force(p.footForce.value)} on the pad`,
          },
        ];
  const screws = motion.screws.map(({ id, tip, away }): Derived => ({
    id: `stop.${id}`,
    field: 'stopRadius',
    title: id === 'rest' ? 'rest stop screw' : 'forward stop screw',
    value: { amount: Math.hypot(tip.x, tip.y), unit: 'mm' },
    text: `tip at ${bare(tip.x)}, ${bare(tip.y)} from the pivot, along ${angle((Math.atan2(-away.y, -away.x) * 180) / Math.PI)}; ${length(1)} of screw is ${length(p.length.mm / Math.hypot(tip.x, tip.y))} at the pad`,
  }));
  const give: readonly Derived[] =
    loads === undefined
      ? []
      : [
          {
            id: 'give',
            field: 'proof',
            title: 'give at the pad',
            value: { amount: loads.deflection, unit: 'mm' },
            text: `${length(loads.deflection)} at ${force(p.proof.value)}; ${loads.reaction.what} takes ${force(loads.reaction.newtons)}, pivot ${force(loads.pivotNewtons)}`,
          },
        ];
  return [...swing, ...ratio, ...pressure, ...screws, ...give];
}
