// What the print of an adapter plate shows to be measured and edited, in the order in which a person measures.
import type { Point } from '../../geometry/index.js';
import type { Dimension, Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { circleDimensions, patternCallOut, withinText } from '../shared/pattern-dimensions.js';
import type { AdapterPlate } from './parameters.js';
import { resolve, type Resolved } from './resolve.js';

const onCircle = (radius: number, degrees: number): Point => ({
  x: radius * Math.cos((degrees * Math.PI) / 180),
  y: radius * Math.sin((degrees * Math.PI) / 180),
});

function centreText({ centre }: Resolved, context: DrawContext): string {
  if (centre === undefined) return '';
  const finished = `⌀${context.format.bare(centre.finished)}`;
  const cut = `cut ⌀${context.format.bare(centre.drawn)}`;
  switch (centre.way) {
    case 'slip-to-weld':
      return centre.drawn === centre.finished
        ? `${finished}, slip to weld`
        : `${finished}, slip to weld; ${cut}, grind`;
    case 'bore-after':
      return `${cut}, bore to ${finished}`;
    case 'turned':
      return `${cut}, turn to ${finished}`;
    default:
      return finished;
  }
}

/** About a dozen dimensions; each with a `field` is edited where it stands. */
export function adapterPlateDimensions(
  _part: Part,
  p: AdapterPlate,
  context: DrawContext,
): readonly Dimension[] {
  const answer = resolve(p);
  if (!answer.ok) return [];
  const r = answer.value;
  let order = 0;
  const next = (): number => (order += 1);
  const dimensions: Dimension[] = [];
  for (const one of r.patterns) {
    const { id, fieldPrefix } = one.pattern;
    dimensions.push(...circleDimensions(one, context, next));
    const calledOut = one.pattern.holes[Math.min(1, one.pattern.holes.length - 1)];
    if (calledOut !== undefined) {
      dimensions.push({
        id: `${id}.holes`,
        kind: 'leader',
        at: calledOut.at,
        field: `${fieldPrefix}bolt`,
        order: next(),
        text: patternCallOut(one, context),
      });
    }
    if (p.clocking.value !== 90 && id === 'pattern1') {
      dimensions.push({
        id: `${id}.clocking`,
        kind: 'angle',
        centre: { x: 0, y: 0 },
        radius: one.circle.diameter / 2,
        fromDegrees: 0,
        toDegrees: p.clocking.value,
        field: `${fieldPrefix}clocking`,
        order: next(),
        text: `${Number(p.clocking.value.toFixed(2))}°`,
      });
    }
  }
  if (r.centre !== undefined) {
    dimensions.push({
      id: 'centre',
      kind: 'diameter',
      centre: { x: 0, y: 0 },
      radius: r.centre.drawn / 2,
      field: p.bore === undefined ? 'hub' : 'bore',
      order: next(),
      text: centreText(r, context),
    });
  }
  if (p.shape === 'round') {
    dimensions.push({
      id: 'outside',
      kind: 'diameter',
      centre: { x: 0, y: 0 },
      radius: r.outside.reach,
      field: p.outside === undefined ? 'edge' : 'outside',
      order: next(),
      text: `⌀${context.format.bare(r.outside.reach * 2)}`,
    });
  } else {
    const lobe = r.patterns.toSorted((a, b) => b.circle.diameter - a.circle.diameter)[0];
    const bolt = lobe?.pattern.holes.at(-1);
    if (bolt !== undefined) {
      dimensions.push({
        id: 'lobe',
        kind: 'radius',
        centre: bolt.at,
        radius: r.outside.edge,
        degrees: (Math.atan2(bolt.at.y, bolt.at.x) * 180) / Math.PI,
        field: 'edge',
        order: next(),
        text: `lobe R${context.format.bare(r.outside.edge)}`,
      });
    }
    if (r.outside.floor !== undefined && r.outside.scallop !== undefined && lobe !== undefined) {
      const holes = lobe.pattern.holes;
      const [a, b] = [holes.at(-1), holes[0]];
      if (a !== undefined && b !== undefined) {
        const angle = (Math.atan2(a.at.y + b.at.y, a.at.x + b.at.x) * 180) / Math.PI;
        dimensions.push({
          id: 'scallop',
          kind: 'leader',
          at: onCircle(r.outside.floor, angle),
          field: 'scallop',
          order: next(),
          text: `scallop R${context.format.bare(r.outside.scallop)}`,
        });
      }
    }
  }
  const light = r.lightening[0];
  if (light !== undefined) {
    dimensions.push({
      id: 'lightening',
      kind: 'leader',
      at: light,
      field: 'lighteningDiameter',
      order: next(),
      text: `${p.lightening} × ⌀${context.format.bare(p.lighteningDiameter.mm)} on ⌀${context.format.bare(r.lighteningCircle * 2)}`,
    });
  }
  dimensions.push({
    id: 'thickness',
    kind: 'leader',
    at: onCircle(r.outside.floor ?? r.outside.reach, r.outside.floor === undefined ? -50 : 270),
    field: 'thickness',
    order: next(),
    text: `t ${withinText(context, p.thickness.mm, p.thickness.plusMinus)}`,
  });
  return dimensions;
}
