// The strand and its idler: take-up against wear, teeth in mesh, place, slack side, room for the bolts.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import {
  boltEnvelope,
  chainWearSource,
  IDLER_PITCHES_AWAY,
  idlerRules,
  idlerSource,
  IDLER_TEETH_IN_MESH,
  wearLimit,
  weakestSource,
  type Source,
} from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { TensionerArm } from './parameters.js';
import type { ResolvedArm } from './resolve.js';

const ROOM: Source = {
  title: 'Heads beside the idler',
  where: 'head or washer outside the chain as it runs round the idler, 2 mm to spare',
  certainty: 'common practice',
};
const SPARE = 2;

/** Teeth of the largest sprocket that wear is judged for when it is not known. */
const LARGEST = 60;

/** What the swing takes up against what wear gives before the chain is replaced, or two links are taken out. */
function checkTakeUp(p: TensionerArm, { travel }: ResolvedArm, facts: Facts): Finding {
  const { pitch } = travel.chain;
  const share = wearLimit(LARGEST, true).replace;
  const wear = share * p.links * pitch;
  const needed = Math.min(wear, 2 * pitch);
  const level = judge(['caution', travel.takeUp < needed - 1e-6]);
  const { length } = facts.format;
  return found({
    code: 'take-up',
    level,
    subject: { featureId: 'idler' },
    anchor: { x: p.arm.mm, y: 0 },
    field: 'swing',
    title: `Swing takes up ${length(travel.takeUp)} of chain, ${length(needed)} wanted`,
    says: `${digits(100 * share)} % of ${p.links} links is ${length(wear)}, two links are ${length(2 * pitch)}; the smaller is wanted. ${
      level === 'pass'
        ? 'The arm keeps the chain tight until it is worn out or two links shorter.'
        : 'A longer arm, more swing, an idler nearer the middle of the strand, or sliding the motor would do.'
    }`,
    value: quantity(travel.takeUp, 'mm'),
    limit: quantity(needed, 'mm'),
    formula: `${digits(travel.end.extra)} − ${digits(travel.start.extra)} = ${digits(travel.takeUp)}; min(${digits(share, 3)} × ${p.links} × ${digits(pitch, 3)}, 2 × ${digits(pitch, 3)}) = ${digits(needed)}`,
    source: weakestSource(idlerSource, chainWearSource),
  });
}

function checkMesh(p: TensionerArm, { travel }: ResolvedArm): readonly Finding[] {
  if (p.idler !== 'sprocket') return [];
  const inMesh = (travel.start.wrapDegrees / 360) * p.teeth;
  return [
    found({
      code: 'idler-mesh',
      level: judge(['note', inMesh < IDLER_TEETH_IN_MESH]),
      subject: { featureId: 'idler' },
      anchor: { x: p.arm.mm, y: 0 },
      field: 'press',
      title: `Chain wraps the idler ${digits(travel.start.wrapDegrees, 1)}°: ${digits(inMesh, 1)} of ${p.teeth} teeth at the start`,
      says:
        inMesh < IDLER_TEETH_IN_MESH
          ? `${IDLER_TEETH_IN_MESH} teeth in mesh keep a loose chain from jumping. More press, a shorter strand, or a plain roller on a slow drive would do.`
          : 'Enough to hold a loose chain.',
      value: quantity(inMesh, 'teeth'),
      limit: quantity(IDLER_TEETH_IN_MESH, 'teeth'),
      formula: `${digits(travel.start.wrapDegrees, 2)} ÷ 360 × ${p.teeth} = ${digits(inMesh)}`,
      source: idlerRules,
    }),
  ];
}

function checkPlace(p: TensionerArm, { travel }: ResolvedArm, facts: Facts): readonly Finding[] {
  const { pitch } = travel.chain;
  const end = p.idlerAt.mm + travel.along;
  const nearest = Math.min(p.idlerAt.mm, p.span.mm - p.idlerAt.mm, end, p.span.mm - end);
  const least = IDLER_PITCHES_AWAY * pitch;
  const level = judge(['caution', nearest < least]);
  return [
    found({
      code: 'idler-place',
      level,
      subject: { featureId: 'idler' },
      anchor: { x: p.arm.mm, y: 0 },
      field: 'idlerAt',
      title: `Idler ${facts.format.length(nearest)} from the next sprocket, ${facts.format.length(least)} wanted`,
      says:
        level === 'pass'
          ? 'The chain bends and straightens again before it meets the sprocket.'
          : 'Nearer than four pitches the chain is bent both ways at once and climbs the teeth.',
      value: quantity(nearest, 'mm'),
      limit: quantity(least, 'mm'),
      formula: `${IDLER_PITCHES_AWAY} × ${digits(pitch, 3)} = ${digits(least)}`,
      source: idlerRules,
    }),
  ];
}

function checkSide(p: TensionerArm): Finding {
  const reverses = p.reverses === 'yes';
  return found({
    code: 'slack-side',
    level: reverses ? 'caution' : 'note',
    field: 'reverses',
    title: reverses
      ? 'This strand pulls when the drive brakes or reverses'
      : 'The idler belongs on the slack strand',
    says: reverses
      ? 'Then the idler takes the whole chain pull: give that pull, lock the arm with a bolt rather than a spring, or tighten by sliding the motor.'
      : 'Turn the driven wheel the way it pulls: the strand that stays loose is the right one.',
    source: idlerRules,
  });
}

/** Pivot and lock bolt heads stay outside the chain as it runs round the idler. */
function checkRoom(p: TensionerArm, r: ResolvedArm, facts: Facts): readonly Finding[] {
  const bolts = [
    { bolt: r.pivot.thread, gap: p.arm.mm, id: 'pivot', field: 'arm' },
    ...(r.slot === undefined
      ? []
      : [
          {
            bolt: r.slot.size.thread,
            gap: Math.min(
              ...[r.slot.middle.at, ...r.slot.ends].map(({ x, y }) => Math.hypot(x - p.arm.mm, y)),
            ),
            id: 'slot',
            field: 'slotRadius',
          },
        ]),
  ].flatMap(({ bolt, gap, id, field }) => {
    const envelope = boltEnvelope(bolt);
    if (!envelope.found) return [];
    const head = Math.max(envelope.row.washerOutside.value, envelope.row.acrossCorners.value) / 2;
    return [{ room: gap - head - r.travel.outerRadius, head, gap, id, field }];
  });
  const [first, ...rest] = bolts;
  if (first === undefined) return [];
  const worst = rest.reduce((a, b) => (b.room < a.room ? b : a), first);
  const level = judge(['stop', worst.room <= 0], ['caution', worst.room < SPARE]);
  return [
    found({
      code: 'idler-room',
      level,
      subject: { featureId: worst.id },
      anchor: worst.id === 'pivot' ? r.pivotHole.at : (r.slot?.middle.at ?? r.pivotHole.at),
      field: worst.field,
      title:
        level === 'pass'
          ? `Chain round the idler clears the bolts by ${facts.format.length(worst.room)}`
          : level === 'stop'
            ? `Chain round the idler runs into the ${worst.id === 'pivot' ? 'pivot' : 'lock'} bolt`
            : `Chain round the idler clears the ${worst.id === 'pivot' ? 'pivot' : 'lock'} bolt by ${facts.format.length(worst.room)} only`,
      says: 'Counted as if they stood in one plane; a spacer that lifts the idler off the arm makes room where there is none. A longer arm, a smaller idler, or the slot elsewhere would do.',
      value: quantity(worst.room, 'mm'),
      limit: quantity(SPARE, 'mm'),
      formula: `${digits(worst.gap)} − ${digits(worst.head)} − ${digits(r.travel.outerRadius)} = ${digits(worst.room)}`,
      source: ROOM,
    }),
  ];
}

export function checkStrand(p: TensionerArm, r: ResolvedArm, facts: Facts): readonly Finding[] {
  return [
    checkTakeUp(p, r, facts),
    ...checkMesh(p, r),
    ...checkPlace(p, r, facts),
    checkSide(p),
    ...checkRoom(p, r, facts),
  ];
}
