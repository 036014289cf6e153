// Draws a cable stop flat: outside with its slot, hole, foot holes, bend line, label.
import { circleContour } from '../../geometry/index.js';
import type { Feature, Part, Staged } from '../../model/index.js';
import { finishPart, refuseStray } from '../shared/finish-part.js';
import { bendLine } from '../shared/foot.js';
import { holeFeature } from '../shared/holes.js';
import { refuseToDraw } from '../shared/refuse.js';
import { cableStopAbout } from './about.js';
import type { CableStop } from './parameters.js';
import { resolveStop, type ResolvedStop } from './resolve.js';

/** The closed hole or the mark to drill and tap; a slotted hole is part of the outline. */
function cableHole(p: CableStop, r: ResolvedStop): readonly Feature[] {
  if (p.seat === 'slot') return [];
  if (r.adjuster !== undefined) return [holeFeature('cable', 'adjuster hole', r.ear.centre, r.adjuster)];
  return [
    {
      id: 'cable',
      name: 'cable hole',
      purpose: 'opening',
      contour: circleContour(r.ear.centre, r.hole / 2, 'opening'),
      hole: { finish: 'cut', size: r.hole, takes: p.neck.mm },
    },
  ];
}

export function drawCableStop(p: CableStop): Staged<Part | undefined> {
  const answer = resolveStop(p);
  if (!answer.ok) return refuseToDraw('cable stop', answer.field, answer.says);
  const r = answer.value;
  const plain: readonly Feature[] = [
    { id: 'outline', name: 'outline', purpose: 'outline', contour: r.ear.contour, edges: r.ear.edges },
    ...cableHole(p, r),
    ...r.laid.holes.map(({ featureId, at }, index) =>
      holeFeature(featureId, `foot hole ${index + 1}`, at, r.foot),
    ),
    ...bendLine(r.laid.bend, p.base.mm, p.radius.mm),
  ];
  const stray = refuseStray(r.ear.contour, plain.slice(1), ({ id }) =>
    id === 'cable' ? 'nose' : p.inset.mm <= r.foot.diameter / 2 ? 'inset' : 'spacing',
  );
  if (stray !== undefined) return refuseToDraw('cable stop', stray.field, stray.says);
  return finishPart(cableStopAbout.id, 'Cable stop', plain, p);
}
