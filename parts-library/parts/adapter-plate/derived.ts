// What follows from the readings of an adapter plate: circles with their ±, holes, centre, edge.
import type { Derived, Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { patternDerived } from '../shared/pattern-derived.js';
import type { AdapterPlate } from './parameters.js';
import { resolve } from './resolve.js';

export function adapterPlateDerived(_part: Part, p: AdapterPlate, context: DrawContext): readonly Derived[] {
  const answer = resolve(p);
  if (!answer.ok) return [];
  const { patterns, centre, outside } = answer.value;
  const { length } = context.format;
  return [
    ...patterns.map((one) =>
      patternDerived(one, context, one.pattern.id === 'pattern1' ? 'bolt circle' : 'second circle'),
    ),
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
