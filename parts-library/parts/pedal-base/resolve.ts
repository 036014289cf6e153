// A pedal base worked out: where its holes, window and pivot places lie; or what does not go together.
import {
  rectangleContour,
  slotContour,
  circleContour,
  type Contour,
  type Point,
} from '../../geometry/index.js';
import type { Unit } from '../../units/index.js';
import type { PlacedHole } from '../shared/bolted.js';
import { sizeHole, type SizedHole } from '../shared/holes.js';
import { refusal, rememberResolved, type Resolved } from '../shared/resolved.js';
import { legOf } from '../shared/weld-edge-fields.js';
import { roundText } from '../shared/words.js';
import type { PedalBase } from './parameters.js';

export interface ResolvedBase {
  readonly outline: Contour;
  readonly window: Contour;
  /** Over all, mm. */
  readonly windowHeight: number;
  readonly cylinder: SizedHole;
  readonly cylinderHoles: readonly PlacedHole[];
  readonly mount: SizedHole;
  readonly mountHoles: readonly PlacedHole[];
  readonly ear: SizedHole;
  readonly earHoles: readonly PlacedHole[];
  /** The pivot's middle, y in mm, negative below the rod. */
  readonly pivotY: number;
}

const NORMAL = { holes: { kind: 'clearance' }, holeFit: 'normal' } as const;

function windowOf(p: PedalBase): { readonly contour: Contour; readonly height: number } {
  const width = p.windowWidth.mm;
  if (p.window === 'round' || p.windowHeight.mm <= width + 1e-3)
    return { contour: circleContour({ x: 0, y: 0 }, width / 2, 'opening'), height: width };
  const half = (p.windowHeight.mm - width) / 2;
  return {
    contour: slotContour({ x: 0, y: -half }, { x: 0, y: half }, width, 'opening'),
    height: p.windowHeight.mm,
  };
}

function cylinderHoles(p: PedalBase): readonly PlacedHole[] {
  const radians = (p.cylinderAngle.value * Math.PI) / 180;
  const half = p.cylinderSpacing.mm / 2;
  // A flange that stands square has its holes exactly on the line.
  const [c, s] =
    p.cylinderAngle.value % 180 === 0
      ? [1, 0]
      : Math.abs(p.cylinderAngle.value) === 90
        ? [0, 1]
        : [Math.cos(radians), Math.sin(radians)];
  return [
    { featureId: 'cylinder.1', at: { x: -half * c, y: -half * s } },
    { featureId: 'cylinder.2', at: { x: half * c, y: half * s } },
  ];
}

function earHoles(p: PedalBase, pivotY: number): readonly PlacedHole[] {
  const x = p.gap.mm / 2 + p.earBoltOut.mm;
  const y = p.earSpacing.mm / 2;
  return [-1, 1].flatMap((side, index) =>
    [-1, 1].map((end, row) => ({
      featureId: `ear.${index + 1}.hole.${row + 1}`,
      at: { x: side * x, y: pivotY + end * y },
    })),
  );
}

function mountHoles(p: PedalBase): readonly PlacedHole[] {
  const x = p.width.mm / 2 - p.mountInset.mm;
  const [low, high] = [-p.below.mm + p.mountInset.mm, p.above.mm - p.mountInset.mm];
  const corners: readonly Point[] = [
    { x: -x, y: low },
    { x, y: low },
    { x, y: high },
    { x: -x, y: high },
  ];
  return corners.map((at, index) => ({ featureId: `mount.${index + 1}`, at }));
}

function work(p: PedalBase): Resolved<ResolvedBase> {
  const cylinder = sizeHole(p);
  if (typeof cylinder === 'string') return refusal('bolt', cylinder);
  const mount = sizeHole({ bolt: p.mountBolt, ...NORMAL });
  if (typeof mount === 'string') return refusal('mountBolt', mount);
  const ear = sizeHole({ bolt: p.earBolt, ...NORMAL });
  if (typeof ear === 'string') return refusal('earBolt', ear);
  const height = p.above.mm + p.below.mm;
  if (2 * p.cornerRadius.mm > Math.min(p.width.mm, height))
    return refusal(
      'cornerRadius',
      `Corners of radius ${roundText(p.cornerRadius.mm)} mm do not fit on ${roundText(p.width.mm)} × ${roundText(height)} mm; smaller ones would do.`,
    );
  if (p.mount === 'holes' && 2 * p.mountInset.mm >= Math.min(p.width.mm, height))
    return refusal(
      'mountInset',
      `Corner holes ${roundText(p.mountInset.mm)} mm from the edges meet in the plate’s middle; a smaller distance would do.`,
    );
  const pivotY = p.pivotAt === 'below' ? -p.pivotDrop.mm : p.pivotDrop.mm;
  const window = windowOf(p);
  return {
    ok: true,
    value: {
      outline: rectangleContour(
        {
          centre: { x: 0, y: (p.above.mm - p.below.mm) / 2 },
          width: p.width.mm,
          height,
          corner: p.cornerRadius.mm,
        },
        'outline',
      ),
      window: window.contour,
      windowHeight: window.height,
      cylinder,
      cylinderHoles: cylinderHoles(p),
      mount,
      mountHoles: p.mount === 'holes' ? mountHoles(p) : [],
      ear,
      earHoles: p.pivotMount === 'slots' ? earHoles(p, pivotY) : [],
      pivotY,
    },
  };
}

export const resolveBase = rememberResolved(work, 'width');

export const thinnerOf = (p: PedalBase): number => Math.min(p.thickness.mm, p.wall.mm);

export const filletOf = (p: PedalBase, unit: Unit): number => legOf(p.weldLeg, thinnerOf(p), unit);

/** Where the ears stand: inner and outer faces, and ends along the plate; mm. */
export function earPlace(p: PedalBase, pivotY: number) {
  const inner = p.gap.mm / 2;
  return {
    inner,
    outer: inner + p.earThickness.mm,
    low: pivotY - p.earBase.mm / 2,
    high: pivotY + p.earBase.mm / 2,
  };
}
