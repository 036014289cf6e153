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
  checkPatternsTogether,
  checkMaterialCaution,
  checkWeldability,
  found,
  gripTorque,
  mergeNotChecked,
  type Facts,
  type HubBeside,
} from '../../checks/index.js';
import {
  boltEnvelope,
  clearanceHole,
  findChain,
  findMaterial,
  findThread,
  type Chain,
  type Material,
} from '../../handbook/index.js';
import type { CutFeature, Finding, Part, Remedy } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import type { Centre } from '../shared/centre.js';
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
  const torques = [
    ...(p.torque === undefined ? [] : [p.torque.value]),
    ...(p.gripMass === undefined || p.tyreDiameter === undefined
      ? []
      : [gripTorque(p.gripMass.value, p.tyreDiameter.mm, p.grip.value)]),
  ];
  return torques.length === 0 ? undefined : { newtonMetres: Math.max(...torques), pullNewtons: 0 };
}

function fieldOfHole(
  p: AdapterPlate,
  facts: Facts,
): (feature: CutFeature) => { readonly field: string; readonly remedies?: readonly Remedy[] } {
  return ({ id }) => {
    if (id === 'centre') return { field: p.bore === undefined ? 'hub' : 'bore' };
    if (id.startsWith('lightening')) return { field: 'lighteningDiameter' };
    const pattern2 = id.startsWith('pattern2') ? p.pattern2 : undefined;
    const prefix = pattern2 === undefined ? '' : 'pattern2.';
    const { bolt, holeFit } = pattern2 ?? p;
    const thread = findThread(bolt);
    const drilled = thread.found ? clearanceHole(thread.row, holeFit) : undefined;
    const size = drilled?.found === true ? ` ⌀${facts.format.length(drilled.row.diameter)}` : '';
    return {
      field: `${prefix}holes`,
      remedies: [
        {
          says: `Mark the holes and drill them${size}`,
          change: [{ op: 'add', path: `/${prefix.replace('.', '/')}holes`, value: 'drill' }],
        },
      ],
    };
  };
}

const keywayLeftOut = (): Finding =>
  found({
    code: 'keyway',
    level: 'caution',
    field: 'keyway',
    title: 'The keyway is left out: this centre takes a hub',
    says: 'A keyway in the plate belongs to a plain bore on a keyed shaft. With a hub the key sits in the hub; choose no keyway, or a plain bore.',
    source: { title: 'Keyed joints', where: 'the key bears in the hub', certainty: 'common practice' },
  });

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
    p.keyway === 'none'
      ? []
      : centre.way !== 'plain'
        ? [keywayLeftOut()]
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
    leg: weldLegOf(p, facts.format.unit),
    sides: p.weldSides,
    thickness: p.thickness.mm,
    material,
  };
  return [
    ...fit,
    ...key,
    ...checkWeldability(material),
    ...checkFilletLeg(weld, facts),
    ...checkHubWeld(weld, load, facts),
    ...checkHubSteel(p.hubSteel),
  ];
}

function checkChain(p: AdapterPlate, { outside, patterns }: Resolved, facts: Facts): readonly Finding[] {
  const drive = chainOf(p);
  if (drive === undefined) {
    return (p.chain === undefined) === (p.teeth === undefined)
      ? []
      : [
          found({
            code: 'not-checked',
            level: 'note',
            field: p.chain === undefined ? 'chain' : 'teeth',
            title: 'the chain beside the plate',
            says: `${p.chain === undefined ? 'Teeth are given without the chain' : 'The chain is given without the teeth'}: with both, room and pull are checked.`,
            source: { title: 'Chain and sprocket', where: 'not given', certainty: 'common practice' },
          }),
        ];
  }
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
      ? { hub: r.centre.hub.diameter, leg: weldLegOf(p, facts.format.unit), sides: p.weldSides }
      : undefined;
  const plate = { material: material.row, thickness: p.thickness.mm };
  return mergeNotChecked([
    ...checkUse(p.use),
    ...checkMaterialCaution(material.row),
    ...checkSmallHoles(part, facts, fieldOfHole(p, facts)),
    ...checkWebs(part, facts),
    ...r.patterns.flatMap(({ pattern, circle, parameters }) => [
      ...checkEdgeDistance(part, pattern, facts),
      ...checkSpacing(pattern, facts),
      ...checkBoltUp(pattern, facts),
      ...checkTapping(pattern, p.thickness.mm, facts),
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
    ...checkPatternsTogether(
      r.patterns.map(({ pattern }) => pattern),
      facts,
    ),
    ...checkPlateSize(part, facts),
  ]);
}
