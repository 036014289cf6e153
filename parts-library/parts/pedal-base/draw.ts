// Draws a pedal base: outside, window, holes, slots of the ears or their etched places, label.
import type { EdgeUse, Feature, Part, Staged } from '../../model/index.js';
import { finishPart, refuseStray } from '../shared/finish-part.js';
import { holeFeature } from '../shared/holes.js';
import { refuseToDraw } from '../shared/refuse.js';
import { slottedFeature } from '../shared/slotted.js';
import { pedalBaseAbout } from './about.js';
import type { PedalBase } from './parameters.js';
import { earPlace, resolveBase, type ResolvedBase } from './resolve.js';

/** An etched line stays this far inside the plate, mm. */
const LINE_ROOM = 2;

/** Inner faces of both ears and the pivot's line across them, as far as they lie on the plate and off its window. */
function earMarks(p: PedalBase, r: ResolvedBase): readonly Feature[] {
  if (p.pivotMount === 'slots') return [];
  const { inner, outer, low, high } = earPlace(p, r.pivotY);
  const [least, most] = [-p.below.mm + LINE_ROOM, p.above.mm - LINE_ROOM];
  const [from, to] = [Math.max(low, least), Math.min(high, most)];
  const line = (
    id: string,
    name: string,
    a: readonly [number, number],
    b: readonly [number, number],
  ): Feature => ({
    id,
    name,
    purpose: 'etch',
    path: {
      vertices: [
        { x: a[0], y: a[1], bulge: 0 },
        { x: b[0], y: b[1], bulge: 0 },
      ],
    },
  });
  return [-1, 1].flatMap((side, index) => [
    line(`ear.${index + 1}.inner`, 'inner face of an ear', [side * inner, from], [side * inner, to]),
    line(`ear.${index + 1}.pivot`, 'pivot line', [side * inner, r.pivotY], [side * outer, r.pivotY]),
  ]);
}

export function drawPedalBase(p: PedalBase): Staged<Part | undefined> {
  const answer = resolveBase(p);
  if (!answer.ok) return refuseToDraw('pedal base', answer.field, answer.says);
  const r = answer.value;
  const { inner, outer, low, high } = earPlace(p, r.pivotY);
  if (
    outer > p.width.mm / 2 - LINE_ROOM ||
    r.pivotY < -p.below.mm + LINE_ROOM ||
    r.pivotY > p.above.mm - LINE_ROOM
  )
    return refuseToDraw(
      'pedal base',
      outer > p.width.mm / 2 - LINE_ROOM ? 'gap' : 'pivotDrop',
      `The pivot’s ears stand beside the plate; a smaller gap or distance, or a larger plate would do.`,
    );
  // The lower edge is segment 0 of a rectangle from its lower left.
  const edges: readonly EdgeUse[] = p.mount === 'weld' ? [{ segment: 0, role: 'weld' }] : [];
  const cut: readonly Feature[] = [
    { id: 'outline', name: 'outline', purpose: 'outline', contour: r.outline, edges },
    {
      id: 'window',
      name: 'push-rod window',
      purpose: 'opening',
      contour: r.window,
      ...(p.window === 'round' ? { hole: { finish: 'cut' as const, size: p.windowWidth.mm } } : {}),
    },
    ...r.cylinderHoles.map(({ featureId, at }, index) =>
      holeFeature(featureId, `cylinder hole ${index + 1}`, at, r.cylinder),
    ),
    ...r.earHoles.map((hole, index) =>
      slottedFeature(
        hole,
        `ear slot ${index + 1}`,
        r.ear,
        p.travel.mm === 0 ? { kind: 'none' } : { kind: 'straight', travel: p.travel.mm, degrees: 90 },
      ),
    ),
    ...r.mountHoles.map(({ featureId, at }, index) =>
      holeFeature(featureId, `mounting hole ${index + 1}`, at, r.mount),
    ),
  ];
  const stray = refuseStray(r.outline, cut.slice(1), ({ id }) =>
    id === 'window'
      ? 'windowWidth'
      : id.startsWith('cylinder')
        ? 'cylinderSpacing'
        : id.startsWith('ear')
          ? 'earBoltOut'
          : 'mountInset',
  );
  if (stray !== undefined) return refuseToDraw('pedal base', stray.field, stray.says);
  const plain = [...cut, ...earMarks(p, r)];
  const { value, findings } = finishPart(pedalBaseAbout.id, 'Pedal base', plain, p, [
    { x: 0, y: -p.below.mm + 2 * p.labelHeight.mm },
    { x: 0, y: p.above.mm - 2 * p.labelHeight.mm },
    { x: 0, y: (low + high) / 2 },
    { x: (inner + p.width.mm / 2) / 2, y: 0 },
  ]);
  return { value, findings };
}
