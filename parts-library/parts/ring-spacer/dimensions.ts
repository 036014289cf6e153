// What the print of a ring spacer shows to be measured and edited.
import type { Dimension, Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { holeCallOut } from '../shared/holes.js';
import { stackView } from './ghosts.js';
import type { RingSpacer } from './parameters.js';
import { resolveRing } from './resolve.js';
import { bareFine } from './words.js';

export function ringSpacerDimensions(
  _part: Part,
  p: RingSpacer,
  { format }: DrawContext,
): readonly Dimension[] {
  const answer = resolveRing(p);
  if (!answer.ok) return [];
  const { outside, bore, layer, stack, holes } = answer.value;
  const text = format.bare;
  const fine = (mm: number): string => bareFine(mm, format);
  const within = (mm: number, plusMinus: number | undefined): string =>
    plusMinus === undefined || plusMinus === 0 ? fine(mm) : `${fine(mm)} ±${fine(plusMinus)}`;
  const view = stackView(p.gap.mm, answer.value);
  const middle = { x: 0, y: 0 };
  let order = 0;
  const next = (): number => (order += 1);
  const gap: Dimension = {
    id: 'gap',
    kind: 'linear',
    along: 'y',
    from: { x: view.half, y: view.bottom },
    to: { x: view.half, y: view.top },
    field: 'gap',
    order: next(),
    text: `gap ${within(p.gap.mm, p.gap.plusMinus)}`,
  };
  const layers = stack.layers.map(({ sheet, count }): Dimension => {
    const ring = view.rings.find(({ thickness }) => thickness === sheet.thickness);
    return {
      id: `layer.${fine(sheet.thickness)}`,
      kind: 'leader',
      at: { x: -view.half, y: ring === undefined ? view.bottom : (ring.from + ring.to) / 2 },
      field: 'plates',
      order: next(),
      text: `${count} × t ${fine(sheet.thickness)}${sheet === layer.sheet ? ' (this part)' : ''}`,
    };
  });
  return [
    gap,
    ...layers,
    {
      id: 'bore',
      kind: 'diameter',
      centre: middle,
      radius: bore / 2,
      field: p.bore === undefined ? 'bolt' : 'bore',
      order: next(),
      text: `${p.boreMade === 'drill' ? 'drill ' : ''}⌀${text(bore)}${p.bore === undefined ? ` for ${p.bolt}` : ''}`,
    },
    {
      id: 'outside',
      kind: 'diameter',
      centre: middle,
      radius: outside / 2,
      field: 'outside',
      order: next(),
      text: `⌀${text(outside)}`,
    },
    ...(holes === undefined
      ? []
      : [
          {
            id: 'pattern.circle',
            kind: 'diameter' as const,
            centre: middle,
            radius: holes.circle.diameter / 2,
            field: 'pattern.circle',
            order: next(),
            text: `⌀${text(holes.circle.diameter)}`,
          },
          {
            id: 'pattern.holes',
            kind: 'leader' as const,
            at: holes.places[1]?.at ?? middle,
            field: 'pattern.bolt',
            order: next(),
            text: holeCallOut(holes.size, holes.places.length, format),
          },
        ]),
  ];
}
