// Draws the ring between two inner races, centred on the origin.
import { circleContour } from '../../geometry/index.js';
import type { Feature, Part, Staged } from '../../model/index.js';
import { etchLabel, noRoomForLabel } from '../shared/label.js';
import { refuseToDraw } from '../shared/refuse.js';
import { bearingSpacerAbout } from './about.js';
import type { BearingSpacer } from './parameters.js';
import { boreOf, thicknessOf } from './sizes.js';

const MIDDLE = { x: 0, y: 0 };

const mm = (value: number): string => `${Number(value.toFixed(2))} mm`;

export function drawBearingSpacer(p: BearingSpacer): Staged<Part | undefined> {
  const bore = boreOf(p);
  const outside = p.outside.mm;
  if (bore <= p.shaft.mm) {
    return refuseToDraw(
      'spacer',
      'bore',
      `A bore of ${mm(bore)} does not pass a shaft of ${mm(p.shaft.mm)}; leave it out for 1 mm over the shaft.`,
    );
  }
  if (outside <= bore) {
    return refuseToDraw(
      'spacer',
      'outside',
      `An outside of ${mm(outside)} leaves no ring round a bore of ${mm(bore)}.`,
    );
  }
  if (p.innerShoulder.mm <= p.shaft.mm) {
    return refuseToDraw(
      'spacer',
      'innerShoulder',
      `The inner race’s outside of ${mm(p.innerShoulder.mm)} is no larger than the shaft of ${mm(p.shaft.mm)}; measure it again.`,
    );
  }
  if (p.outerShoulder.mm <= p.innerShoulder.mm) {
    return refuseToDraw(
      'spacer',
      'outerShoulder',
      `The outer race’s inside of ${mm(p.outerShoulder.mm)} is no larger than the inner race’s outside of ${mm(p.innerShoulder.mm)}; measure both again.`,
    );
  }
  const plain: readonly Feature[] = [
    {
      id: 'outline',
      name: 'outline',
      purpose: 'outline',
      contour: circleContour(MIDDLE, outside / 2, 'outline'),
    },
    {
      id: 'bore',
      name: 'bore',
      purpose: 'opening',
      contour: circleContour(MIDDLE, bore / 2, 'opening'),
      hole: { finish: 'cut', size: bore, takes: p.shaft.mm },
    },
  ];
  const reach = (outside + bore) / 4;
  const label = etchLabel(p.label, p.labelHeight.mm, plain, [
    { x: 0, y: -reach },
    { x: 0, y: reach },
  ]);
  return {
    value: {
      family: bearingSpacerAbout.id,
      name: 'Bearing spacer',
      features: [...plain, ...(label ?? [])],
      material: p.material,
      thickness: thicknessOf(p),
      quantity: 1,
    },
    findings: label === undefined ? [noRoomForLabel(p.label ?? '')] : [],
  };
}
