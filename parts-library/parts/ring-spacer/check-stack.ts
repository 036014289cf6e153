// Does the stack fill the gap: what remains, what remains at worst, and how well the plates are known.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import type { Source } from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { RingSpacer } from './parameters.js';
import type { Ring } from './resolve.js';
import { stackPlusMinus } from './stack.js';
import { ringsText, stackText } from './words.js';

const SUM: Source = {
  title: 'Stack of rings',
  where:
    'gap less the sum of the thicknesses, every combination weighed; rings of one plate are off the same way, so their ± adds up',
  certainty: 'common practice',
};

const ROLLED: Source = {
  title: 'ASTM A6 plate over-thickness',
  where:
    '+0.03 in (0.76 mm) for widths to 60 in and thickness to 1 in, public excerpt; 0.01 in under is from memory',
  certainty: 'published',
};
/** Over-thickness of rolled plate, mm. */
const OVER_THICKNESS = 0.76;

const MANY: Source = {
  title: 'Stacked shims',
  where: 'few thick rings rather than many thin ones, thin ones between thick ones',
  certainty: 'common practice',
};
/** From this many rings a stack is springy. */
const MANY_RINGS = 5;

function checkRemains(p: RingSpacer, { stack }: Ring, facts: Facts): Finding {
  const { fine: length } = facts.format;
  const most = Math.max(p.mostPlay.mm, p.leastPlay.mm);
  const isLoose = stack.remains > most + 1e-9;
  const closing = `A plate of ${length(stack.remains - most)} to ${length(stack.remains - p.leastPlay.mm)} more, or one ring ground to suit, would close it.`;
  return found({
    code: 'stack-remains',
    level: judge(['caution', isLoose]),
    anchor: { x: 0, y: 0 },
    field: isLoose ? 'plates' : 'gap',
    title: `${ringsText(stack.rings)}, ${stackText(stack, facts.format)}: ${length(stack.remains)} remains of ${length(p.gap.mm)}`,
    says: isLoose
      ? `More than the ${length(most)} that is still well, and nothing closer can be made of these plates in ${ringsText(p.mostRings)}. ${closing}`
      : `At most ${length(most)} is still well${p.leastPlay.mm > 0 ? `, ${length(p.leastPlay.mm)} must stay` : ''}.`,
    value: quantity(stack.remains, 'mm'),
    limit: quantity(most, 'mm'),
    formula: `${digits(p.gap.mm, 3)} − (${stack.layers.map(({ sheet, count }) => `${count} × ${digits(sheet.thickness, 4)}`).join(' + ')}) = ${digits(p.gap.mm, 3)} − ${digits(stack.total, 4)} = ${digits(stack.remains, 4)}`,
    source: SUM,
  });
}

function checkWorst(p: RingSpacer, { stack }: Ring, facts: Facts): readonly Finding[] {
  const { fine: length } = facts.format;
  const rings = stackPlusMinus(stack);
  const gap = p.gap.plusMinus;
  if (rings === undefined || gap === undefined) {
    const missing = [
      ...(gap === undefined ? ['the gap'] : []),
      ...stack.layers.flatMap(({ sheet }) =>
        sheet.plusMinus === undefined ? [`the ${length(sheet.thickness)} plate`] : [],
      ),
    ].join(', ');
    return [
      found({
        code: 'stack-worst',
        level: 'note',
        field: gap === undefined ? 'gap' : 'plates',
        title: `Whether the stack goes in at worst is not known: no ± for ${missing}`,
        says: `Rolled plate may be ${length(OVER_THICKNESS)} over its nominal thickness. Measure each with a micrometer, scale off, and type the reading with its ±, for example 6.05 ±0.02.`,
        limit: quantity(OVER_THICKNESS, 'mm'),
        source: ROLLED,
      }),
    ];
  }
  const room = stack.remains - p.leastPlay.mm;
  const off = gap + rings;
  const isTight = off > room + 1e-9;
  return [
    found({
      code: 'stack-worst',
      level: judge(['caution', isTight]),
      field: 'gap',
      title: isTight
        ? `May not go in: ${length(off - room)} too thick when gap and rings are off the wrong way`
        : `Goes in at worst with ${length(room - off)} to spare`,
      says: isTight
        ? `Gap ±${length(gap)} and rings ±${length(rings)} use up more than the ${length(room)} that is there. Measure closer, ask for more play, or keep a thinner ring at hand.`
        : `At the other end ${length(stack.remains + off)} remains.`,
      value: quantity(off, 'mm'),
      limit: quantity(room, 'mm'),
      formula: `${digits(gap, 3)} + ${stack.layers.map(({ sheet, count }) => `${count} × ${digits(sheet.plusMinus ?? 0, 3)}`).join(' + ')} = ${digits(off, 3)}; room ${digits(stack.remains, 4)} − ${digits(p.leastPlay.mm, 3)} = ${digits(room, 4)}`,
      source: SUM,
    }),
  ];
}

function checkMany({ stack }: Ring): readonly Finding[] {
  if (stack.rings < MANY_RINGS) return [];
  return [
    found({
      code: 'stack-many',
      level: 'note',
      field: 'mostRings',
      title: `${ringsText(stack.rings)} in one stack: springy when clamped`,
      says: 'Each face adds its scale, its dross and its lean. Fewer, thicker rings would do; one of them ground to size is better still.',
      value: quantity(stack.rings, '1'),
      limit: quantity(MANY_RINGS - 1, '1'),
      source: MANY,
    }),
  ];
}

/** What is to be said of the stack. */
export function checkStack(p: RingSpacer, ring: Ring, facts: Facts): readonly Finding[] {
  return [checkRemains(p, ring, facts), ...checkWorst(p, ring, facts), ...checkMany(ring)];
}
