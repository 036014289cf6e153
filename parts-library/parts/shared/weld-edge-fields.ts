// The fields of an edge that is welded to a tube: the tube, how the edge meets it, the fillet.
import { leastFilletLeg } from '../../handbook/index.js';
import type { Unit } from '../../units/index.js';
import type { Entry, FieldKit } from '../fields/index.js';

/**
 * Tube under the edge and the fillets along it.
 * @param tube outside of the frame's tube, and `wall` its wall, before anything is typed
 * @param round tubes that an edge of this family is usually coped to, mm
 */
export function weldEdgeFields(
  f: FieldKit,
  tube: string,
  wall: string,
  round: readonly [from: number, to: number],
) {
  const group = 'Weld edge';
  return {
    edge: f.choice({
      title: 'Edge',
      help: 'flat: straight, on a flat or a square tube; along: straight, along the crest of a round tube; coped: hollow, standing square across a round tube.',
      group,
      choices: [
        { value: 'flat', label: 'Straight, on a flat' },
        { value: 'along', label: 'Straight, along a round tube' },
        { value: 'coped', label: 'Coped, across a round tube' },
      ],
      default: 'flat',
    }),
    tube: f.length.given({
      title: 'Tube outside',
      help: 'Outside diameter of the tube under the edge; of a square tube its side.',
      measuring: 'Caliper over the tube in two directions, paint and scale off.',
      group,
      min: 5,
      max: 600,
      usual: round,
      default: tube,
    }),
    wall: f.length.given({
      title: 'Tube wall',
      help: 'Wall of the tube, or thickness of the flat: the thinner of it and the plate rules the fillet.',
      measuring: 'Caliper over a sawn end, burr off.',
      group,
      min: 0.8,
      max: 40,
      usual: [2, 6],
      default: wall,
    }),
    ...filletFields(f, group),
  };
}

/** Leg of the fillets and the faces they are on. */
export function filletFields(f: FieldKit, group: string) {
  return {
    weldLeg: f.length.maybe({
      title: 'Fillet leg',
      help: 'Leg of the fillets. Left out: the least for the thinner part joined.',
      measuring: 'Fillet gauge.',
      group,
      min: 1,
      max: 30,
      usual: [3, 6],
    }),
    weldSides: f.choice({
      title: 'Welded',
      help: 'On both faces of the plate, or on one.',
      group,
      choices: [
        { value: 'both', label: 'Both sides' },
        { value: 'one', label: 'One side' },
      ],
      default: 'both',
    }),
  };
}

/** Leg as given, or the least for the thinner part, mm. */
export const legOf = (leg: Entry | undefined, thinner: number, unit: Unit): number =>
  leg?.mm ?? leastFilletLeg(thinner, unit).leg;
