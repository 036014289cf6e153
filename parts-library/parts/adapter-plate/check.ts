// The rules of an adapter plate, in the order in which they are read.
import {
  chainPull,
  checkBoltLoads,
  checkBoltUp,
  checkBoreFit,
  checkChainPull,
  checkChainRoom,
  checkEdgeDistance,
  checkFilletLeg,
  checkHeadRoom,
  checkHubSteel,
  checkHubWeld,
  checkKeyway,
  checkLabel,
  checkMeasuring,
  checkPlateSize,
  checkSeat,
  checkSmallHoles,
  checkSpacing,
  checkTapping,
  checkThreadEngagement,
  checkUse,
  checkWebs,
  type Facts,
  type HubBeside,
} from '../../checks/index.js';
import { boltEnvelope, findChain, findMaterial, type Chain, type Material } from '../../handbook/index.js';
import type { CutFeature, Finding, Part, Remedy } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import type { Centre } from './centre.js';
import type { AdapterPlate } from './parameters.js';
import { resolve, type Resolved } from './resolve.js';
import { weldLegOf } from './weld.js';

interface Load {
  readonly newtonMetres: number;
  readonly pullNewtons: number;
  readonly offset?: number | undefined;
}

function chainOf(p: AdapterPlate): { readonly chain: Chain; readonly teeth: number } | undefined {
  if (p.chain === undefined || p.teeth === undefined) return undefined;
  const chain = findChain(p.chain);
  return chain.found ? { chain: chain.row, teeth: p.teeth } : undefined;
}

/** Worst of torque and tyre grip, with the pull that a chain adds across the plate. */
function loadOf(p: AdapterPlate): Load | undefined {
  const drive = chainOf(p);
  if (drive !== undefined) {
    const pull = chainPull({
      ...drive,
      torque: p.torque?.value,
      gripMass: p.gripMass?.value,
      tyreDiameter: p.tyreDiameter?.mm,
      grip: p.grip.value,
    });
    return pull === undefined
      ? undefined
      : { newtonMetres: pull.newtonMetres, pullNewtons: pull.newtons, offset: p.chainOffset?.mm };
  }
  return p.torque === undefined ? undefined : { newtonMetres: p.torque.value, pullNewtons: 0 };
}

function fieldOfHole(
  p: AdapterPlate,
): (feature: CutFeature) => { readonly field: string; readonly remedies?: readonly Remedy[] } {
  return ({ id }) => {
    if (id === 'centre') return { field: p.bore === undefined ? 'hub' : 'bore' };
    if (id.startsWith('lightening')) return { field: 'lighteningDiameter' };
    const prefix = id.startsWith('pattern2') ? 'pattern2.' : '';
    return {
      field: `${prefix}holes`,
      remedies: [
        {
          says: 'Mark the holes and drill them',
          change: [{ op: 'add', path: `/${prefix.replace('.', '/')}holes`, value: 'drill' }],
        },
      ],
    };
  };
}

function checkCentre(
  p: AdapterPlate,
  centre: Centre | undefined,
  material: Material,
  load: Load | undefined,
  facts: Facts,
): readonly Finding[] {
  if (centre === undefined || centre.way === 'none') return [];
  const fit = checkBoreFit(
    {
      way: centre.way,
      finished: centre.finished,
      cut: centre.drawn,
      thickness: p.thickness.mm,
      ...(centre.hub === undefined ? {} : { hub: centre.hub }),
    },
    facts,
  );
  const key =
    p.keyway === 'none' || centre.way !== 'plain'
      ? []
      : checkKeyway(
          {
            bore: centre.finished,
            system: p.keyway,
            thickness: p.thickness.mm,
            material,
            newtonMetres: load?.newtonMetres,
          },
          facts,
        );
  if (!centre.welded || centre.hub === undefined) return [...fit, ...key];
  const weld = {
    hub: centre.hub.diameter,
    leg: weldLegOf(p),
    sides: p.weldSides,
    thickness: p.thickness.mm,
    material,
  };
  return [
    ...fit,
    ...key,
    ...checkFilletLeg(weld, facts),
    ...checkHubWeld(weld, load, facts),
    ...checkHubSteel(p.hubSteel),
  ];
}

function checkChain(p: AdapterPlate, { outside, patterns }: Resolved, facts: Facts): readonly Finding[] {
  const drive = chainOf(p);
  if (drive === undefined) return [];
  const heads = patterns.flatMap(({ pattern }) => {
    const envelope = boltEnvelope(pattern.thread);
    return envelope.found
      ? [
          pattern.circle / 2 +
            Math.max(envelope.row.acrossCorners.value, envelope.row.washerOutside.value) / 2,
        ]
      : [];
  });
  return [
    ...checkChainRoom(
      { ...drive, reach: outside.reach, ...(heads.length === 0 ? {} : { headReach: Math.max(...heads) }) },
      facts,
    ),
    ...checkChainPull(
      {
        ...drive,
        torque: p.torque?.value,
        gripMass: p.gripMass?.value,
        tyreDiameter: p.tyreDiameter?.mm,
        grip: p.grip.value,
      },
      facts,
    ),
  ];
}

/** All findings of the plate. */
export function checkAdapterPlate(part: Part, p: AdapterPlate, facts: Facts): readonly Finding[] {
  const answer = resolve(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const r = answer.value;
  const load = loadOf(p);
  const beside: HubBeside | undefined =
    r.centre?.hub !== undefined && r.centre.welded
      ? { hub: r.centre.hub.diameter, leg: weldLegOf(p), sides: p.weldSides }
      : undefined;
  const plate = { material: material.row, thickness: p.thickness.mm };
  return [
    ...checkUse(p.use),
    ...checkSmallHoles(part, facts, fieldOfHole(p)),
    ...checkWebs(part, facts),
    ...r.patterns.flatMap(({ pattern, circle, parameters }) => [
      ...checkEdgeDistance(part, pattern, facts),
      ...checkSpacing(pattern, facts),
      ...checkBoltUp(pattern, facts),
      ...checkTapping(pattern, facts),
      ...checkThreadEngagement(pattern, plate, p.boltGrade, facts),
      ...checkBoltLoads(part, pattern, load, material.row, p.boltGrade, facts),
      ...(beside === undefined ? [] : checkSeat(pattern, beside, facts)),
      ...checkHeadRoom(pattern, beside, facts),
      ...checkMeasuring(pattern, circle, parameters.boltCircle.measure.readings, facts),
    ]),
    ...checkCentre(p, r.centre, material.row, load, facts),
    ...checkChain(p, r, facts),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...checkPlateSize(part, facts),
  ];
}
