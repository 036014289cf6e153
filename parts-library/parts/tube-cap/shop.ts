// What is done to a tube cap or base plate, in order, and what is bought for it.
import type { Facts } from '../../checks/index.js';
import type { HardwareItem, Part, ShopStep } from '../../model/index.js';
import { boltItems } from '../shared/bolted.js';
import { holeSteps } from '../shared/holes.js';
import { DEBURR } from '../shared/weld-steps.js';
import type { TubeCap } from './parameters.js';
import { filletOf, resolveCap } from './resolve.js';

/** Where the air goes, said before any heat. */
function ventStep(p: TubeCap, length: (mm: number) => string): ShopStep {
  const says = {
    here: `Blow through the vent ⌀${length(p.ventDiameter.mm)} before the first tack: the tube is closed while it is welded.`,
    tube: 'Drill the vent in the tube now, before the first tack, low and out of sight; deburr it inside.',
    open: 'Make sure that the tube’s far end is open before the first tack.',
    none: 'Stop: a closed tube needs a vent before it is welded.',
  }[p.vent];
  return p.vent === 'tube'
    ? { kind: 'drill', says }
    : { kind: 'caution', says, ...(p.vent === 'here' ? { featureIds: ['vent'] } : {}) };
}

export function tubeCapSteps(_part: Part, p: TubeCap, { format }: Facts): readonly ShopStep[] {
  const answer = resolveCap(p);
  if (!answer.ok) return [];
  const { size, holes } = answer.value;
  const { length } = format;
  const leg = length(filletOf(p, format.unit));
  const fit = {
    cap:
      p.shelf.mm < 0
        ? `Lay the cap on the tube’s end, ${length(-p.shelf.mm)} in from all sides.`
        : 'Lay the cap on the tube’s end, as much proud on all sides.',
    plug: `Let the plug in by ${leg}; file a notch for the tube’s inner seam.`,
    base: 'Stand the tube on the base’s middle; square it to the plate from two sides.',
  }[p.kind];
  return [
    DEBURR,
    {
      kind: 'measure',
      says: 'Saw the tube square, and measure it at its end: it is seldom its nominal size.',
    },
    ...holeSteps(
      size,
      holes.map(({ featureId }) => featureId),
      format,
    ),
    {
      kind: 'caution',
      says: 'Look into the tube: no oil, fuel, water or cleaner in it; zinc, cadmium and paint off, a hand’s width back.',
    },
    ventStep(p, length),
    {
      kind: 'grind',
      says: `Grind ${p.kind === 'base' ? 'the plate where the tube stands' : 'the plate’s edge'} and the tube’s end to bright metal.`,
      featureIds: ['outline'],
    },
    { kind: 'fit', says: fit },
    {
      kind: 'tack',
      says: 'Tack in the middle of all four sides, opposite ones after each other; check that it is square.',
    },
    {
      kind: 'weld',
      says: `Weld ${leg} fillet all round, opposite sides in turn, corners in one run.`,
      featureIds: ['outline'],
    },
    ...(p.kind === 'base'
      ? [
          {
            kind: 'measure' as const,
            says: 'Lay a straight edge over the base when cold: the weld draws it hollow. Press or grind it flat.',
          },
        ]
      : p.kind === 'cap' && p.shelf.mm <= 0
        ? [{ kind: 'grind' as const, says: 'Grind the bead flush with the tube.' }]
        : []),
    {
      kind: 'paint',
      says:
        p.vent === 'here' && p.kind === 'base'
          ? 'Wire-brush, paint; the vent stays open as a drain.'
          : 'When cold, close the vent with a plug or sealer if water could stand in the tube; wire-brush, paint.',
    },
  ];
}

export function tubeCapHardware(_part: Part, p: TubeCap, { format }: Facts): readonly HardwareItem[] {
  const answer = resolveCap(p);
  if (!answer.ok) return [];
  const { tube, holes, size } = answer.value;
  const bare = (mm: number): string => format.bare(mm);
  const section = tube.isRound ? `⌀${bare(tube.width)}` : `${bare(tube.width)} × ${bare(tube.height)}`;
  return [
    {
      id: 'tube',
      kind: 'tube',
      name: `tube ${section} × ${bare(p.wall.mm)}`,
      quantity: 1,
      says: `Sawn square; ${p.kind === 'plug' ? 'the plug is let in, its length stays' : `the plate adds ${format.length(p.thickness.mm)} to its length`}.`,
    },
    ...(holes.length === 0 || size.made === 'tapped'
      ? []
      : boltItems(
          {
            id: 'base',
            bolt: p.bolt,
            count: holes.length,
            grip: p.thickness.mm + p.seat.mm,
            grade: p.boltGrade,
          },
          format,
        )),
  ];
}
