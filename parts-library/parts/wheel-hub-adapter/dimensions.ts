// What the print of a wheel-hub adapter shows to be measured, edited and machined, in measuring order.
import type { Point } from '../../geometry/index.js';
import type { Dimension, Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { fitText } from '../shared/machined-words.js';
import { circleDimensions, patternCallOut, withinText } from '../shared/pattern-dimensions.js';
import type { WheelHubAdapter } from './parameters.js';
import { resolveHubAdapter, RIM_AT, shownRim } from './resolve.js';

const MIDDLE: Point = { x: 0, y: 0 };

const onCircle = (radius: number, degrees: number): Point => ({
  x: radius * Math.cos((degrees * Math.PI) / 180),
  y: radius * Math.sin((degrees * Math.PI) / 180),
});

export function wheelHubAdapterDimensions(
  _part: Part,
  p: WheelHubAdapter,
  context: DrawContext,
): readonly Dimension[] {
  const answer = resolveHubAdapter(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { format } = context;
  const text = format.bare;
  const rim = shownRim(p, r);
  let order = 0;
  const next = (): number => (order += 1);
  const { count, thread, holes } = r.wheel.pattern;
  const studHole =
    p.studs === 'pressed'
      ? `${count} × ream ⌀${text(r.wheel.size.diameter)} for ${thread.name}`
      : patternCallOut(r.wheel, context);
  return [
    ...circleDimensions(r.hub, context, next),
    {
      id: 'pattern1.holes',
      kind: 'leader',
      at: r.hub.pattern.holes[1]?.at ?? MIDDLE,
      field: 'bolt',
      order: next(),
      text: `${patternCallOut(r.hub, context)}${p.sink.mm > 0 ? `, let in ${text(p.sink.mm)}` : ''}${r.cone > 0 ? `, 60° cone ${text(r.cone)}` : ''}`,
    },
    {
      id: 'centre',
      kind: 'diameter',
      centre: MIDDLE,
      radius: r.drawn / 2,
      field: 'hubPilot',
      order: next(),
      text: `cut ⌀${text(r.drawn)}, turn ${fitText(p.hubPilot.mm, p.pilotFit, format)}`,
    },
    ...circleDimensions(r.wheel, context, next),
    {
      id: 'pattern2.holes',
      kind: 'leader',
      at: holes[1]?.at ?? MIDDLE,
      field: 'pattern2.bolt',
      order: next(),
      text: studHole,
    },
    {
      id: 'studs',
      kind: 'leader',
      at: holes.at(-1)?.at ?? MIDDLE,
      field: 'studLength',
      order: next(),
      text: `studs ${p.studGrade}, ${text(p.studLength.mm)} out`,
    },
    ...(p.wheelPilot === 'spigot'
      ? [
          {
            id: 'spigot',
            kind: 'leader' as const,
            at: onCircle(p.pattern2.boltedBore.mm / 2, 215),
            field: 'pattern2.boltedBore',
            order: next(),
            text: `turn spigot ${fitText(p.pattern2.boltedBore.mm, p.spigotFit, format)}, ${text(p.spigot.mm)} high`,
          },
        ]
      : []),
    {
      id: 'outside',
      kind: 'diameter',
      centre: MIDDLE,
      radius: r.reach,
      field: 'outside',
      order: next(),
      text: `⌀${text(2 * r.reach)}`,
    },
    {
      id: 'thickness',
      kind: 'leader',
      at: onCircle(r.reach, -60),
      field: 'thickness',
      order: next(),
      text: `t ${withinText(context, p.thickness.mm, p.thickness.plusMinus)}, face to ${text(r.flange)} between seats`,
    },
    {
      id: 'flatness',
      kind: 'leader',
      at: onCircle(r.reach, 30),
      field: 'flatness',
      order: next(),
      text: `seats flat, parallel ${format.fine(p.flatness.mm)}`,
    },
    {
      id: 'runout',
      kind: 'leader',
      at: rim === undefined ? onCircle(r.reach, 160) : onCircle(rim, RIM_AT),
      field: 'runout',
      order: next(),
      text: `rim ⌀${text(p.wheel.mm)}: runout ${format.fine(p.runout.mm)} at most`,
    },
  ];
}
