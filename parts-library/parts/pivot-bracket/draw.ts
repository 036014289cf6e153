// Draws a pivot bracket flat: outside, pivot hole, foot holes, bend line, label.
import { circleContour } from '../../geometry/index.js';
import type { Feature, Part, Staged } from '../../model/index.js';
import { bendLine } from '../shared/foot.js';
import { finishPart, refuseStray } from '../shared/finish-part.js';
import { holeFeature } from '../shared/holes.js';
import { refuseToDraw } from '../shared/refuse.js';
import { pivotBracketAbout } from './about.js';
import type { PivotBracket } from './parameters.js';
import { isMirrored, resolveBracket } from './resolve.js';

const NAMES = {
  pair: 'Pivot bracket, one of a pair',
  handed: 'Pivot bracket, one hand of a pair',
  single: 'Pivot bracket',
} as const;

export function drawPivotBracket(p: PivotBracket): Staged<Part | undefined> {
  const answer = resolveBracket(p);
  if (!answer.ok) return refuseToDraw('bracket', answer.field, answer.says);
  const { ear, cut, finished, pin, pressing, size, holes, bend } = answer.value;
  const plain: readonly Feature[] = [
    { id: 'outline', name: 'outline', purpose: 'outline', contour: ear.contour, edges: ear.edges },
    {
      id: 'pivot',
      name: 'pivot hole',
      purpose: 'opening',
      contour: circleContour(ear.centre, cut / 2, 'opening'),
      hole: {
        finish: p.pivot === 'bush' ? 'bore' : 'cut',
        size: finished,
        takes: pressing,
        ...(p.pivot === 'bolt' ? { thread: pin.name } : {}),
      },
      // A tube is welded in all round; what turns presses on the half towards the nose.
      edges:
        p.pivot === 'tube'
          ? [0, 1].map((segment) => ({ segment, role: 'weld' as const }))
          : [{ segment: 1, role: 'bearing' }],
    },
    ...holes.map(({ featureId, at }, index) => holeFeature(featureId, `foot hole ${index + 1}`, at, size)),
    ...bendLine(bend, p.base.mm, p.radius.mm),
  ];
  const stray = refuseStray(ear.contour, plain.slice(1), ({ id }) =>
    id === 'pivot' ? 'nose' : p.inset.mm <= size.diameter / 2 ? 'inset' : 'spacing',
  );
  if (stray !== undefined) return refuseToDraw('bracket', stray.field, stray.says);
  const { value, findings } = finishPart(pivotBracketAbout.id, NAMES[p.standoffs], plain, p, [
    { x: 0, y: (ear.centre.y - cut / 2 - (bend === undefined ? -answer.value.footEnd : 0)) / 2 },
  ]);
  return {
    value: {
      ...value,
      quantity: p.standoffs === 'pair' ? 2 : 1,
      ...(isMirrored(p) ? { mirrored: true } : {}),
    },
    findings,
  };
}
