// What the print of a disc carrier shows to be measured, edited and machined, in the order in which a person measures.
import type { Point } from '../../geometry/index.js';
import type { Dimension, Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { fitText } from '../shared/machined-words.js';
import { circleDimensions, patternCallOut, withinText } from '../shared/pattern-dimensions.js';
import type { DiscCarrier } from './parameters.js';
import { resolveCarrier } from './resolve.js';

const MIDDLE: Point = { x: 0, y: 0 };

const onCircle = (radius: number, degrees: number): Point => ({
  x: radius * Math.cos((degrees * Math.PI) / 180),
  y: radius * Math.sin((degrees * Math.PI) / 180),
});

const directionOf = ({ x, y }: Point): number => (Math.atan2(y, x) * 180) / Math.PI;

export function discCarrierDimensions(
  _part: Part,
  p: DiscCarrier,
  context: DrawContext,
): readonly Dimension[] {
  const answer = resolveCarrier(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { format } = context;
  const text = format.bare;
  let order = 0;
  const next = (): number => (order += 1);
  const discBolts = r.disc.pattern.holes.map(({ at }) => at);
  const lobeAt = discBolts.at(-1) ?? MIDDLE;
  const hubAt = r.hub.pattern.holes[1]?.at ?? MIDDLE;
  const between = directionOf(discBolts[0] ?? MIDDLE) - 180 / r.disc.pattern.count;
  return [
    ...circleDimensions(r.disc, context, next),
    {
      id: 'pattern1.holes',
      kind: 'leader',
      at: discBolts[1] ?? MIDDLE,
      field: 'bolt',
      order: next(),
      text: patternCallOut(r.disc, context),
    },
    ...circleDimensions(r.hub, context, next),
    {
      id: 'pattern2.holes',
      kind: 'leader',
      at: hubAt,
      field: 'pattern2.bolt',
      order: next(),
      text: patternCallOut(r.hub, context),
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
    ...(p.discPilot === 'turned'
      ? [
          {
            id: 'disc-pilot',
            kind: 'leader' as const,
            at: onCircle(p.boltedBore.mm / 2, between + 1080 / r.disc.pattern.count),
            field: 'boltedBore',
            order: next(),
            text: `turn pilot ${fitText(p.boltedBore.mm, p.shoulderFit, format)}, ${text(r.depth)} high`,
          },
        ]
      : []),
    {
      id: 'lobe',
      kind: 'radius',
      centre: p.shape === 'round' ? MIDDLE : lobeAt,
      radius: p.shape === 'round' ? r.outside.reach : r.outside.edge,
      ...(p.shape === 'round' ? {} : { degrees: directionOf(lobeAt) }),
      field: 'edge',
      order: next(),
      text: p.shape === 'round' ? `R${text(r.outside.reach)}` : `lobe R${text(r.outside.edge)}`,
    },
    ...(r.outside.scallop === undefined
      ? []
      : [
          {
            id: 'scallop',
            kind: 'leader' as const,
            at: onCircle(r.outside.floor, between),
            field: 'scallop',
            order: next(),
            text: `scallop R${text(r.outside.scallop)}`,
          },
        ]),
    ...(r.windows.length === 0
      ? []
      : [
          {
            id: 'windows',
            kind: 'leader' as const,
            at: onCircle(r.window.outer, between + 1440 / r.disc.pattern.count),
            field: 'spoke',
            order: next(),
            text: `${r.windows.length} windows R${text(r.window.inner)} to R${text(r.window.outer)}, spoke ${text(p.spoke.mm)}, corners R${text(p.windowCorner.mm)}`,
          },
        ]),
    {
      id: 'thickness',
      kind: 'leader',
      at: onCircle(r.outside.floor, between + 360 / r.disc.pattern.count),
      field: 'thickness',
      order: next(),
      text: `t ${withinText(context, p.thickness.mm, p.thickness.plusMinus)}, face both sides to ${text(r.finished)}`,
    },
    {
      id: 'flatness',
      kind: 'leader',
      at: onCircle(r.outside.reach, directionOf(discBolts.at(-2) ?? MIDDLE)),
      field: 'flatness',
      order: next(),
      text: `seats flat, parallel ${format.fine(p.flatness.mm)}`,
    },
    {
      id: 'runout',
      kind: 'leader',
      at: onCircle(p.disc.mm / 2, between),
      field: 'runout',
      order: next(),
      text: `disc ⌀${text(p.disc.mm)}: runout ${format.fine(p.runout.mm)} at most`,
    },
  ];
}
