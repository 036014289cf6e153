// Dimensions of the arm in the order in which a person measures it, each a view on a parameter.
import { pinHoleOf } from './draw.js';
import type { Dimension, Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { layoutOf } from './layout.js';
import type { PedalArm } from './parameters.js';

type Wanted = Dimension extends infer D ? (D extends Dimension ? Omit<D, 'order'> : never) : never;

const ORIGIN = { x: 0, y: 0 };
/** A pin hole this near to the line pivot to pad needs no angle of its own, degrees. */
const ON_LINE = 0.05;

/** A wider angle is told in words: its arc would run round the whole part, degrees. */
const WIDEST = 75;

const degreesText = (value: number): string => `${Number(value.toFixed(1))}°`;

export function pedalArmDimensions(_part: Part, p: PedalArm, { format }: DrawContext): readonly Dimension[] {
  const layout = layoutOf(p);
  const text = format.bare;
  const { bore, boss, pad, pins, stop, tab, springs, flap, bends } = layout;
  const head = p.headHeight.mm / 2;
  const knee = p.profile === 'dog-leg' ? layout.discs[1]?.centre : undefined;
  const kneeRadius = layout.discs[1]?.radius ?? 0;
  const [pin = ORIGIN] = pins;
  const end = layout.discs.at(-1) ?? { centre: pad, radius: head };
  const isJoggled = layout.added > 0;
  const stopAt = tab?.tip.centre ?? stop?.at;
  const made = { ream: ', ream', drill: ', drill', cut: '' }[p.linkMade];
  const [firstSpring] = springs;
  const angleFrom = Math.min(0, layout.pinDegrees);
  const wanted: readonly Wanted[] = [
    {
      id: 'tube',
      kind: 'diameter',
      centre: ORIGIN,
      radius: bore / 2,
      field: 'tubeOutside',
      text: `⌀${text(bore)}${p.pivot === 'bushed' ? ', bored for bush' : ''}`,
    },
    {
      id: 'length',
      kind: 'linear',
      along: 'x',
      from: ORIGIN,
      to: pad,
      field: 'length',
      text: isJoggled ? `${text(pad.x)} flat, ${text(p.length.mm)} bent` : text(p.length.mm),
    },
    ...(knee === undefined
      ? []
      : ([
          {
            id: 'knee.along',
            kind: 'linear',
            along: 'x',
            from: ORIGIN,
            to: knee,
            field: 'kneeAlong',
            text: text(p.kneeAlong.mm),
          },
          {
            id: 'knee.off',
            kind: 'linear',
            along: 'y',
            from: ORIGIN,
            to: knee,
            field: 'kneeOff',
            text: text(Math.abs(p.kneeOff.mm)),
          },
        ] as const)),
    { id: 'boss', kind: 'radius', centre: ORIGIN, radius: boss, field: 'bossEdge', text: `R${text(boss)}` },
    ...(knee === undefined
      ? []
      : ([
          {
            id: 'knee.height',
            kind: 'leader',
            at: { x: knee.x, y: knee.y + Math.sign(p.kneeOff.mm || 1) * kneeRadius },
            field: 'kneeHeight',
            text: `${text(2 * kneeRadius)} high`,
          },
        ] as const)),
    {
      id: 'head',
      kind: 'linear',
      along: 'y',
      from: { x: end.centre.x, y: pad.y - head },
      to: { x: end.centre.x, y: pad.y + head },
      field: 'headHeight',
      text: text(p.headHeight.mm),
    },
    {
      id: 'pin.radius',
      kind: 'linear',
      along: 'aligned',
      from: ORIGIN,
      to: pin,
      field: 'linkRadius',
      text: text(Math.hypot(pin.x, pin.y)),
    },
    ...(p.linkAngle === undefined || Math.abs(layout.pinDegrees) < ON_LINE
      ? []
      : Math.abs(layout.pinDegrees) > WIDEST
        ? ([
            {
              id: 'pin.angle',
              kind: 'leader',
              at: pin,
              field: 'linkAngle',
              text: `at ${degreesText(layout.pinDegrees)}`,
            },
          ] as const)
        : ([
            {
              id: 'pin.angle',
              kind: 'angle',
              centre: ORIGIN,
              radius: 0.75 * Math.hypot(pin.x, pin.y),
              fromDegrees: angleFrom,
              toDegrees: Math.max(0, layout.pinDegrees),
              field: 'linkAngle',
              text: degreesText(layout.pinDegrees),
            },
          ] as const)),
    {
      id: 'pin',
      kind: 'leader',
      at: pin,
      field: 'linkPin',
      text: `${pins.length > 1 ? `${pins.length} × ` : ''}⌀${text(pinHoleOf(p))}${made}`,
    },
    ...(stopAt === undefined
      ? []
      : ([
          {
            id: 'stop',
            kind: 'linear',
            along: 'aligned',
            from: ORIGIN,
            to: stopAt,
            field: 'stopRadius',
            text: text(p.stopRadius.mm),
          },
        ] as const)),
    ...(firstSpring === undefined
      ? []
      : ([
          {
            id: 'spring',
            kind: 'leader',
            at: firstSpring.at,
            field: 'springAt',
            text: `${springs.length > 1 ? `${springs.length} × ` : ''}⌀${text(p.springHole.mm)} spring, at ${text(p.springAt.mm)}`,
          },
        ] as const)),
    ...(p.pad === 'welded'
      ? ([
          {
            id: 'pad',
            kind: 'leader',
            at: { x: pad.x, y: pad.y + head + p.padThickness.mm },
            field: 'padLength',
            text: `pad ${text(p.padLength.mm)} × ${text(p.padWidth.mm)} × ${text(p.padThickness.mm)}`,
          },
        ] as const)
      : []),
    ...(flap === undefined
      ? []
      : ([
          {
            id: 'pad.length',
            kind: 'linear',
            along: 'x',
            from: { x: flap.left, y: flap.top },
            to: { x: flap.right, y: flap.top },
            field: 'padLength',
            text: text(flap.right - flap.left),
          },
          {
            id: 'pad.width',
            kind: 'linear',
            along: 'y',
            from: { x: flap.right, y: flap.fold },
            to: { x: flap.right, y: flap.top },
            field: 'padWidth',
            text: text(p.padWidth.mm),
          },
          {
            id: 'fold',
            kind: 'leader',
            at: { x: (flap.left + flap.right) / 2, y: flap.fold },
            field: 'padAngle',
            text: `${p.fold === 'slots' ? 'slots' : `score ${text(p.groove.mm)}`}, fold ${p.mirrored === 'yes' ? 'down ' : ''}${degreesText(p.padAngle.value)}, weld`,
          },
        ] as const)),
    ...bends
      .filter(({ id }) => id === 'bend.jog.1')
      .map(({ at, degrees }): Wanted => ({
        id: 'joggle',
        kind: 'leader',
        at,
        field: 'jogOffset',
        text: `joggle ${text(p.jogOffset?.mm ?? 0)}, 2 × ${degreesText(degrees)} ${p.mirrored === 'yes' ? 'down and up' : 'up and down'}`,
      })),
  ];
  return wanted.map((dimension, index): Dimension => ({ ...dimension, order: index + 1 }));
}
