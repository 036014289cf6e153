// Draws a tube cap or base plate: outside, vent, bolt holes, label; the tube’s middle is the origin.
import { circleContour } from '../../geometry/index.js';
import type { EdgeUse, Feature, Part, Staged } from '../../model/index.js';
import { finishPart, refuseStray } from '../shared/finish-part.js';
import { holeFeature } from '../shared/holes.js';
import { refuseToDraw } from '../shared/refuse.js';
import { tubeCapAbout } from './about.js';
import type { TubeCap } from './parameters.js';
import { resolveCap, sectionContour } from './resolve.js';

const NAMES = { cap: 'Tube cap', plug: 'Tube plug', base: 'Base plate' } as const;

export function drawTubeCap(p: TubeCap): Staged<Part | undefined> {
  const answer = resolveCap(p);
  if (!answer.ok) return refuseToDraw('plate', answer.field, answer.says);
  const { plate, tube, size, holes } = answer.value;
  const contour = sectionContour(plate, 'outline');
  const edges: readonly EdgeUse[] =
    p.kind === 'base' ? [] : contour.map((_, segment) => ({ segment, role: 'weld' }));
  const plain: readonly Feature[] = [
    { id: 'outline', name: 'outline', purpose: 'outline', contour, edges },
    ...(p.vent === 'here'
      ? [
          {
            id: 'vent',
            name: 'vent hole',
            purpose: 'opening' as const,
            contour: circleContour({ x: 0, y: 0 }, p.ventDiameter.mm / 2, 'opening'),
            hole: { finish: 'cut' as const, size: p.ventDiameter.mm },
          },
        ]
      : []),
    ...holes.map(({ featureId, at }, index) => holeFeature(featureId, `bolt hole ${index + 1}`, at, size)),
  ];
  const stray = refuseStray(contour, plain.slice(1), ({ id }) => (id === 'vent' ? 'ventDiameter' : 'inset'));
  if (stray !== undefined) return refuseToDraw('plate', stray.field, stray.says);
  // Beside the tube of a base plate: under it nobody reads a label.
  const beside = (plate.height / 2 + tube.height / 2) / 2;
  const places =
    p.kind === 'base'
      ? [
          { x: 0, y: -beside },
          { x: 0, y: beside },
        ]
      : [];
  return finishPart(tubeCapAbout.id, NAMES[p.kind], plain, p, places);
}
