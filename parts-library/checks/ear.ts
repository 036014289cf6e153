// An ear with a pin through it: bearing, tear-out, the metal beside the hole, the pin in single or double shear.
import { reachAlong, type Contour, type Point } from '../geometry/index.js';
import {
  bearing,
  boltShear,
  clearToEdge,
  findGrade,
  netSection,
  strengthAt,
  type GradeName,
  type Material,
  type Thread,
} from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { Facts } from './facts.js';
import { digits, found, judge, percent, quantity } from './findings.js';

export interface Ear {
  readonly outline: Contour;
  readonly featureId: string;
  readonly at: Point;
  /** Pin or bush that presses on the ear, and the hole, mm. */
  readonly pin: number;
  readonly hole: number;
  readonly thickness: number;
  readonly material: Material;
  /** Ears that share the pull. */
  readonly ears: 1 | 2;
  readonly fields: { readonly pin: string; readonly beside: string; readonly thickness: string };
}

export interface EarLoad {
  readonly newtons: number;
  /** Way that the pin is pulled, a unit vector. */
  readonly direction: Point;
}

/** Share of strength that is still comfortable for a static check that leaves shock and fatigue out. */
const COMFORTABLE = 0.5;

const level = (share: number) => judge(['stop', share > 1], ['caution', share > COMFORTABLE]);

const whole = (newtons: number): string => digits(newtons, 0);

/** Clear metal ahead of the hole, and the whole width beside it, along and across the pull, mm. */
function metalRound({ outline, at, hole }: Ear, { x, y }: Point) {
  const ahead = clearToEdge(reachAlong(outline, at, { x, y }), hole);
  const width = reachAlong(outline, at, { x: y, y: -x }) + reachAlong(outline, at, { x: -y, y: x });
  return { ahead, width };
}

/** Bearing and tear-out ahead of the pin, and the net section beside it, for the share of one ear. */
export function checkEar(ear: Ear, load: EarLoad | undefined, facts: Facts): readonly Finding[] {
  const strength = strengthAt(ear.material, ear.thickness);
  if (load === undefined || strength === undefined) return [];
  const newtons = load.newtons / ear.ears;
  const { ahead, width } = metalRound(ear, load.direction);
  const place = { subject: { featureId: ear.featureId }, anchor: ear.at } as const;
  const { tensileMegapascals, yieldMegapascals } = strength;
  const press = bearing({ bolt: ear.pin, thickness: ear.thickness, clear: ahead, tensileMegapascals });
  const net = netSection({
    width,
    hole: ear.hole,
    thickness: ear.thickness,
    yieldMegapascals,
    tensileMegapascals,
  });
  const pressShare = newtons / press.allowableNewtons;
  const netShare = newtons / net.allowableNewtons;
  const { length, force } = facts.format;
  const each = ear.ears === 2 ? ' in each ear' : '';
  const t = digits(ear.thickness);
  return [
    found({
      ...place,
      code: 'bearing',
      level: level(pressShare),
      field: press.governs === 'tear-out' ? ear.fields.beside : ear.fields.thickness,
      title: `${press.governs === 'tear-out' ? 'Tear-out ahead of the pin' : 'Bearing of the pin'} ${percent(pressShare)} used`,
      says: `${force(newtons)}${each}, ${length(ahead)} of metal ahead of the hole, ${ear.material.name}. Static only.${pressShare > COMFORTABLE ? ' More metal ahead, a thicker plate, or a larger pin would do.' : ''}`,
      value: quantity(newtons, 'N'),
      limit: quantity(press.allowableNewtons, 'N'),
      formula: `min(1.2 × ${digits(ahead)} × ${t} × ${tensileMegapascals}, 2.4 × ${digits(ear.pin)} × ${t} × ${tensileMegapascals}) ÷ 2 = ${whole(press.allowableNewtons)} N`,
      source: press.source,
    }),
    found({
      ...place,
      code: 'net-section',
      level: level(netShare),
      field: ear.fields.beside,
      title: `Metal beside the hole ${percent(netShare)} used`,
      says: `${force(newtons)}${each} on ${length(net.netWidth)} of the ${length(width)} across the pull; the hole counts 2 mm larger for its damaged edge.${netShare > COMFORTABLE ? ' A larger nose, a smaller hole, or a thicker plate would do.' : ''}`,
      value: quantity(newtons, 'N'),
      limit: quantity(net.allowableNewtons, 'N'),
      formula: `min(${yieldMegapascals} × ${digits(width)} × ${t} ÷ 1.67, ${tensileMegapascals} × ${digits(net.netWidth)} × ${t} ÷ 2) = ${whole(net.allowableNewtons)} N`,
      source: net.source,
    }),
  ];
}

/** The bolt as a pin, in one shear plane, or two between a pair of ears. */
export function checkPin(
  ear: Ear,
  load: EarLoad | undefined,
  thread: Thread,
  gradeName: GradeName,
): readonly Finding[] {
  const grade = findGrade(gradeName, thread);
  if (load === undefined) return [];
  const place = {
    code: 'bolt-shear',
    subject: { featureId: ear.featureId },
    anchor: ear.at,
  } as const;
  if (!grade.found) {
    return [
      found({
        ...place,
        code: 'not-checked',
        level: 'note',
        field: ear.fields.pin,
        title: `shear of the bolt (${thread.name}, ${gradeName})`,
        says: grade.says,
        source: {
          title: 'Bolt grades',
          where: 'no strength for this size and grade',
          certainty: 'published',
        },
      }),
    ];
  }
  const capacity = boltShear(thread, grade.row);
  const total = ear.ears * capacity.designNewtons;
  const share = load.newtons / total;
  return [
    found({
      ...place,
      level: level(share),
      field: ear.fields.pin,
      title: `Bolt shear ${percent(share)} of ${thread.name} ${gradeName} in ${ear.ears === 2 ? 'double' : 'single'} shear`,
      says: `Static, through the thread. ${ear.ears === 1 ? 'In single shear the bolt is also bent by its lever across the joint, which is not counted: keep it tight.' : 'Side play bends the bolt, which is not counted: keep it small.'}${share > COMFORTABLE ? ' A larger bolt, a stronger grade, or a pair of ears would do.' : ''}`,
      value: quantity(load.newtons, 'N'),
      limit: quantity(total, 'N'),
      formula: `${ear.ears} × ${digits(capacity.factor)} × ${digits(grade.row.tensileMegapascals)} × ${digits(thread.stressArea)} ÷ 1.25 = ${whole(total)} N`,
      source: capacity.source,
    }),
  ];
}

/** Said when no pull was given. */
export function notCheckedLoad(
  field: string,
  what: string,
  says = 'Give the greatest pull, and the pin, its hole, the metal beside it and the weld are checked.',
): Finding {
  return found({
    code: 'not-checked',
    level: 'note',
    field,
    title: what,
    says,
    source: { title: 'Load on the part', where: 'not given', certainty: 'common practice' },
  });
}
