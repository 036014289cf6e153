// A tensioner arm worked out once: holes, slot, belt round them, travel.
import { arcSlotContour, circleContour, hullContour, type Disc, type Point } from '../../geometry/index.js';
import type { CutFeature, EdgeUse, Feature } from '../../model/index.js';
import type { PlacedHole } from '../shared/bolted.js';
import { holeFeature, sizeHole, type SizedHole } from '../shared/holes.js';
import { refuseStray } from '../shared/finish-part.js';
import { refusal, rememberResolved, type Resolved } from '../shared/resolved.js';
import { roundText } from '../shared/words.js';
import type { TensionerArm } from './parameters.js';
import { travelOf, type Travel } from './travel.js';

export interface ResolvedArm {
  readonly pivot: SizedHole;
  readonly idler: SizedHole;
  readonly idlerHole: PlacedHole;
  readonly pivotHole: PlacedHole;
  /** Diameter of the opening at the pivot when finished, mm. */
  readonly pivotOpening: number;
  readonly pivotNose: number;
  readonly idlerNose: number;
  /** The slot's bolt in the middle and at both ends of its slot. */
  readonly slot?: {
    readonly size: SizedHole;
    readonly middle: PlacedHole;
    readonly ends: readonly [Point, Point];
    readonly travel: number;
  };
  readonly spring?: Point;
  readonly travel: Travel;
  readonly features: readonly Feature[];
}

const PIVOT: Point = { x: 0, y: 0 };
/** Metal beside an opening, in thicknesses; edge distance in bolt diameters, when none is given. */
const USUAL_WEB = 1.5;
const USUAL_EDGE = 2;

/** A point by its distance from the pivot and its angle from the arm's line. */
export const onArm = (radius: number, degrees: number): Point => ({
  x: radius * Math.cos((degrees * Math.PI) / 180),
  y: radius * Math.sin((degrees * Math.PI) / 180),
});

const noseOf = (opening: number, bolt: number, thickness: number): number =>
  Math.max(USUAL_EDGE * bolt, opening / 2 + USUAL_WEB * thickness);

/** The sides of the slot bear on the bolt; its ends may carry the start of the cut. */
const SLOT_SIDES: readonly EdgeUse[] = [
  { segment: 0, role: 'bearing' },
  { segment: 2, role: 'bearing' },
];

function slotOf(p: TensionerArm): Resolved<ResolvedArm['slot']> {
  if (p.lock !== 'slot') return { ok: true, value: undefined };
  const size = sizeHole({ bolt: p.lockBolt, holes: { kind: 'clearance' }, holeFit: p.lockFit });
  if (typeof size === 'string') return refusal('lockBolt', size);
  const half = p.swing.value / 2;
  return {
    ok: true,
    value: {
      size,
      middle: { featureId: 'slot', at: onArm(p.slotRadius.mm, p.slotAngle.value) },
      ends: [
        onArm(p.slotRadius.mm, p.slotAngle.value - half),
        onArm(p.slotRadius.mm, p.slotAngle.value + half),
      ],
      travel: (p.slotRadius.mm * p.swing.value * Math.PI) / 180,
    },
  };
}

function slotFeature(p: TensionerArm, size: SizedHole): CutFeature {
  const half = p.swing.value / 2;
  return {
    id: 'slot',
    name: 'lock slot',
    purpose: 'opening',
    contour: arcSlotContour(
      {
        centre: PIVOT,
        radius: p.slotRadius.mm,
        fromDegrees: p.slotAngle.value - half,
        toDegrees: p.slotAngle.value + half,
        width: size.diameter,
      },
      'opening',
    ),
    edges: SLOT_SIDES,
    hole: { finish: 'cut', size: size.diameter, thread: size.thread.name, takes: size.thread.diameter },
  };
}

/** Discs that keep metal round the slot: at its ends and at steps between, since a belt cuts corners. */
function slotDiscs(p: TensionerArm, size: SizedHole): readonly Disc[] {
  const radius = noseOf(size.diameter, size.thread.diameter, p.thickness.mm);
  const steps = Math.max(2, Math.ceil(p.swing.value / 15));
  return Array.from({ length: steps + 1 }, (_, step) => ({
    centre: onArm(p.slotRadius.mm, p.slotAngle.value + p.swing.value * (step / steps - 0.5)),
    radius,
  }));
}

const FIELDS: Readonly<Record<string, string>> = {
  pivot: 'pivotNose',
  idler: 'idlerNose',
  slot: 'slotRadius',
  spring: 'springAt',
};

function resolveFresh(p: TensionerArm): Resolved<ResolvedArm> {
  const pivot = sizeHole({ bolt: p.pivotBolt, holes: p.pivotHoles, holeFit: 'close' });
  if (typeof pivot === 'string') return refusal('pivotHoles', pivot);
  const idler = sizeHole({ bolt: p.idlerBolt, holes: p.idlerHoles, holeFit: 'close' });
  if (typeof idler === 'string') return refusal('idlerHoles', idler);
  const slot = slotOf(p);
  if (!slot.ok) return slot;
  const travel = travelOf(p);
  if (!travel.ok) return travel;
  const t = p.thickness.mm;
  const pivotOpening = p.bush === undefined ? pivot.diameter : p.bush.mm + p.bushFit.mm;
  const pivotNose = p.pivotNose?.mm ?? noseOf(pivotOpening, pivot.thread.diameter, t);
  const idlerNose = p.idlerNose?.mm ?? noseOf(idler.diameter, idler.thread.diameter, t);
  const axle = onArm(p.arm.mm, 0);
  const spring = p.lock === 'spring' ? onArm(p.springAt.mm, p.springAngle.value) : undefined;
  const discs: readonly Disc[] = [
    { centre: PIVOT, radius: pivotNose },
    { centre: axle, radius: idlerNose },
    ...(slot.value === undefined ? [] : slotDiscs(p, slot.value.size)),
    ...(spring === undefined ? [] : [{ centre: spring, radius: p.springHole.mm / 2 + USUAL_WEB * t }]),
  ];
  const outline: CutFeature = {
    id: 'outline',
    name: 'outline',
    purpose: 'outline',
    contour: hullContour(discs, 'outline'),
  };
  const pivotFeature: Feature =
    p.bush === undefined
      ? holeFeature('pivot', 'pivot hole', PIVOT, pivot)
      : {
          id: 'pivot',
          name: 'pivot tube opening',
          purpose: 'opening',
          contour: circleContour(PIVOT, pivotOpening / 2, 'opening'),
          hole: { finish: 'cut', size: pivotOpening, takes: p.bush.mm },
        };
  const inner: readonly Feature[] = [
    pivotFeature,
    holeFeature('idler', 'idler hole', axle, idler),
    ...(slot.value === undefined ? [] : [slotFeature(p, slot.value.size)]),
    ...(spring === undefined
      ? []
      : [
          {
            id: 'spring',
            name: 'spring hole',
            purpose: 'opening' as const,
            contour: circleContour(spring, p.springHole.mm / 2, 'opening'),
            hole: { finish: 'cut' as const, size: p.springHole.mm },
          },
        ]),
  ];
  const stray = refuseStray(outline.contour, inner, ({ id }) => FIELDS[id] ?? 'arm');
  if (stray !== undefined) return stray;
  if (p.lock === 'slot' && p.slotRadius.mm <= pivotOpening / 2 + (slot.value?.size.diameter ?? 0) / 2) {
    return refusal(
      'slotRadius',
      `A slot ${roundText(p.slotRadius.mm)} mm from the pivot runs into the pivot’s own opening; a larger radius would do.`,
    );
  }
  return {
    ok: true,
    value: {
      pivot,
      idler,
      pivotHole: { featureId: 'pivot', at: PIVOT },
      idlerHole: { featureId: 'idler', at: axle },
      pivotOpening,
      pivotNose,
      idlerNose,
      ...(slot.value === undefined ? {} : { slot: slot.value }),
      ...(spring === undefined ? {} : { spring }),
      travel: travel.value,
      features: [outline, ...inner],
    },
  };
}

/** Pivot and idler holes that are made alike are made together. */
export const areAlike = (p: TensionerArm, { pivot, idler }: ResolvedArm): boolean =>
  p.bush === undefined &&
  pivot.made === idler.made &&
  pivot.thread.name === idler.thread.name &&
  pivot.diameter === idler.diameter;

/** Works an arm out; the same parameters object once. */
export const resolveArm = rememberResolved(resolveFresh, 'swing');
