// What follows from the readings of an adapter plate: circles with their ±, holes, centre, edge.
import type { Derived, Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import type { AdapterPlate } from './parameters.js';
import type { ResolvedPattern } from './pattern.js';
import { resolve } from './resolve.js';

function circleOf({ circle, pattern, size }: ResolvedPattern, { format }: DrawContext): Derived {
  const { length } = format;
  const diameter =
    circle.plusMinus === undefined
      ? `⌀${length(circle.diameter)}, ± not known`
      : `⌀${format.lengthWithin(circle.diameter, circle.plusMinus)}`;
  const name = size.drill === '' || size.drill.endsWith('mm') ? '' : ` (${size.drill})`;
  return {
    id: `${pattern.id}.circle`,
    field: `${pattern.fieldPrefix}boltCircle`,
    title: pattern.id === 'pattern1' ? 'bolt circle' : 'second circle',
    value: {
      amount: circle.diameter,
      unit: 'mm',
      ...(circle.plusMinus === undefined ? {} : { plusMinus: circle.plusMinus }),
    },
    text: `${diameter}; ${pattern.count} holes ⌀${length(pattern.holeDiameter)}${name} for ${pattern.thread.name}`,
  };
}

export function adapterPlateDerived(_part: Part, p: AdapterPlate, context: DrawContext): readonly Derived[] {
  const answer = resolve(p);
  if (!answer.ok) return [];
  const { patterns, centre, outside } = answer.value;
  const { length } = context.format;
  return [
    ...patterns.map((pattern) => circleOf(pattern, context)),
    ...(centre === undefined
      ? []
      : [
          {
            id: 'centre',
            field: p.bore === undefined ? 'hub' : 'bore',
            title: 'centre',
            value: { amount: centre.finished, unit: 'mm' as const },
            text: `⌀${length(centre.finished)} finished${centre.drawn === centre.finished ? '' : `, cut ⌀${length(centre.drawn)}`}`,
          },
        ]),
    {
      id: 'edge',
      field: 'edge',
      title: 'edge',
      value: { amount: outside.edge, unit: 'mm' },
      text: `${length(outside.edge)} from the outermost bolts to the outside`,
    },
  ];
}
