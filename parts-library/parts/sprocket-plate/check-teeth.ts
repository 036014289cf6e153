// What the torch and the chain make of the teeth: thickness, seat, tips, caliper diameter.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import { rootLimits, sourceOf, toothRange, weakestSource, type Source } from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { Point } from '../../geometry/index.js';
import { outsideForLand } from '../shared/sprocket/tooth-gap.js';
import type { SprocketPlate } from './parameters.js';
import type { Teeth } from './teeth.js';

/** Where the first gap's bottom and the tip beside it lie. */
const bottomOf = ({ root }: Teeth): Point => ({ x: 0, y: root / 2 });
const tipPoint = ({ outside, count }: Teeth): Point => ({
  x: (outside / 2) * Math.sin(Math.PI / count),
  y: (outside / 2) * Math.cos(Math.PI / count),
});

/** Chamfer of a tooth's edges, shares of the pitch. */
const CHAMFER = { deep: 0.125, radial: 0.5 } as const;

const INNER_WIDTH: Source = {
  title: 'Teeth between the chain’s inner plates',
  where: 'plate thinner than the inner width, or it does not go in',
  certainty: 'common practice',
};

/** Plate against the chain's inner width: too thick binds or does not go in, too thin lets the chain wander. */
export function checkToothThickness(p: SprocketPlate, { chain }: Teeth, facts: Facts): readonly Finding[] {
  const range = toothRange(chain);
  const width = p.widthMeasured?.mm ?? chain.innerWidth;
  const t = p.thickness.mm;
  const length = facts.format.length;
  const place = { code: 'tooth-thickness', field: 'thickness' } as const;
  const wanted = `${range.low === undefined ? 'up to' : `${length(range.low)} to`} ${length(range.high)}`;
  if (p.faces === 'faced') {
    const isThin = t < range.nominal;
    return [
      found({
        ...place,
        level: judge(['caution', isThin], ['note', true]),
        field: 'faces',
        title: isThin
          ? `Nothing to turn down: plate ${length(t)}, teeth ${length(range.nominal)}`
          : `Teeth turned down from ${length(t)} to ${length(range.nominal)}`,
        says: isThin
          ? `The plate is thinner than the teeth are wanted. A plate of ${wanted} as cut, or a thicker one to turn down, would do.`
          : 'Turn both faces alike, down to below the chain’s side plates; centre on the pilot.',
        value: quantity(t, 'mm'),
        limit: quantity(range.nominal, 'mm'),
        source: range.source,
      }),
    ];
  }
  if (t >= width) {
    return [
      found({
        ...place,
        level: 'stop',
        title: `Plate ${length(t)} does not go between the inner plates, ${length(width)} apart`,
        says: `${chain.name} chain wants teeth ${wanted} thick. A thinner plate, teeth turned down, or a wider chain would do.`,
        value: quantity(t, 'mm', p.thickness.plusMinus),
        limit: quantity(width, 'mm'),
        formula: `${digits(t)} ≥ ${digits(width)}`,
        source: weakestSource(INNER_WIDTH, sourceOf(chain, 'innerWidth')),
        remedies: [
          {
            says: `Turn the teeth down to ${length(range.nominal)}`,
            change: [{ op: 'add', path: '/faces', value: 'faced' }],
          },
        ],
      }),
    ];
  }
  const isThick = t > range.high;
  const isThin = range.low !== undefined && t < range.low;
  const chamfer = `about ${length(CHAMFER.deep * chain.pitch)} deep, ${length(CHAMFER.radial * chain.pitch)} down the tooth`;
  const isBroken = p.faces === 'chamfered';
  return [
    found({
      ...place,
      level: judge(['note', isThick && isBroken], ['caution', isThick || isThin]),
      title: `Plate ${length(t)}, ${chain.name} chain wants ${wanted}`,
      says: isThick
        ? isBroken
          ? `${length(width - t)} is left in the chain, both sides together. Chamfer both edges, ${chamfer}, and line the sprockets up well.`
          : `Only ${length(width - t)} is left in the chain, both sides together: any misalignment rides up on the inner plates. Chamfer the tips (${chamfer}), turn the teeth down, or take a thinner plate.`
        : isThin
          ? `The chain may wander ${length((width - t) / 2)} to each side and wears the flanks to knives. A thicker plate would do.`
          : `${length(width - t)} of side play in the chain. Broken tip edges, ${chamfer}, help it on.`,
      value: quantity(t, 'mm', p.thickness.plusMinus),
      limit: quantity(isThin ? (range.low ?? range.high) : range.high, 'mm'),
      formula: `0.93 or 0.95 of ${digits(chain.innerWidth)}: nominal ${digits(range.nominal)}, ${range.low === undefined ? 'at most' : `${digits(range.low)} to`} ${digits(range.high)}`,
      source: range.source,
      ...(isThick && !isBroken
        ? {
            remedies: [
              {
                says: 'Chamfer the tips',
                change: [{ op: 'add' as const, path: '/faces', value: 'chamfered' }],
              },
              {
                says: 'Turn the teeth down',
                change: [{ op: 'add' as const, path: '/faces', value: 'faced' }],
              },
            ],
          }
        : {}),
    }),
  ];
}

const TORCH: Source = {
  title: 'Small curves under a torch',
  where:
    'the path runs half a kerf inside a hollow; under half a kerf of radius the torch stands and burns; no firm limit in print',
  certainty: 'common practice',
};

/** The roller's seat against half a kerf: the torch runs inside it on a radius that much smaller. */
export function checkSeatRadius(teeth: Teeth, facts: Facts): readonly Finding[] {
  const { gap, chain } = teeth;
  const half = facts.kerf.amount / 2;
  const path = gap.seat - half;
  const length = facts.format.length;
  const isTight = path < half;
  return [
    found({
      code: 'seat-radius',
      level: judge(['stop', path <= 0], ['caution', isTight], ['note', path < facts.kerf.amount]),
      subject: { featureId: 'outline' },
      anchor: bottomOf(teeth),
      field: 'chain',
      title: `Roller seat R${length(gap.seat)}, torch path R${length(Math.max(0, path))}`,
      says:
        path <= 0
          ? `The kerf of ${length(facts.kerf.amount)} is wider than the seat: the torch cannot cut it. A finer nozzle or a larger chain would do.`
          : isTight
            ? 'The torch nearly stands in the seat and burns it hollow; a worn nozzle makes it worse. A finer nozzle, a fresh one, and arc speed held down would help; better a larger chain.'
            : `Wide enough for the torch; keep the nozzle fresh, since a wider kerf deepens every seat. Roller ${length(chain.roller)}.`,
      value: quantity(path, 'mm'),
      limit: quantity(facts.kerf.amount, 'mm'),
      formula: `${digits(gap.seat)} − ${digits(facts.kerf.amount)} ÷ 2 = ${digits(path)}`,
      source: TORCH,
    }),
  ];
}

/** The tip that is left between two flanks: the torch goes up one side and down the other. */
export function checkTips(teeth: Teeth, facts: Facts): readonly Finding[] {
  const { land, gap, outside, diameters } = teeth;
  const kerf = facts.kerf.amount;
  const length = facts.format.length;
  const wanted = outsideForLand(gap, kerf);
  const isLow = outside < diameters.isoOutside.min - 1e-6;
  const canMend = land < kerf && wanted > diameters.isoOutside.min;
  return [
    found({
      code: 'tooth-tip',
      level: judge(['caution', land < kerf / 2 || isLow], ['note', land < kerf]),
      subject: { featureId: 'outline' },
      anchor: tipPoint(teeth),
      field: 'outside',
      title: isLow
        ? `Tips on ⌀${length(outside)}, below the least of ISO 606, ⌀${length(diameters.isoOutside.min)}`
        : `Tips ${length(land)} broad, kerf ${length(kerf)}`,
      says: isLow
        ? 'Short teeth let a worn or slack chain jump. A larger outside would do.'
        : land < kerf
          ? 'The torch passes on both sides within one kerf: the tips melt round. They carry nothing, so it does no harm to the drive; file the beads off' +
            (canMend ? ', or make the outside a little smaller.' : '.')
          : 'Broad enough to stand beside the cut.',
      value: quantity(isLow ? outside : land, 'mm'),
      limit: quantity(isLow ? diameters.isoOutside.min : kerf, 'mm'),
      formula: isLow
        ? `d + p (1 − 1.6/${teeth.count}) − d1 = ${digits(diameters.isoOutside.min)}`
        : `${digits(outside)} sin(180°/${teeth.count} − flank) = ${digits(land)}`,
      source: isLow ? { ...diameters.source, title: 'ISO 606 tip diameter' } : TORCH,
      ...(canMend
        ? {
            remedies: [
              {
                says: `Outside ⌀${length(wanted)}: tips one kerf broad`,
                change: [{ op: 'add' as const, path: '/outside', value: Number(wanted.toFixed(2)) }],
              },
            ],
          }
        : {}),
    }),
  ];
}

/** Caliper diameter as drawn, its limits, and what kerf and cutting class do to it. */
export function checkCaliper(p: SprocketPlate, teeth: Teeth, facts: Facts): readonly Finding[] {
  const { caliper, chain, gap, count } = teeth;
  const limits = rootLimits(chain, p.teeth, gap.form);
  if (limits === undefined) return [];
  const band = limits.most - limits.least;
  const kerf = facts.kerf.plusMinus;
  const cut = facts.cutTolerance(caliper);
  const length = facts.format.length;
  const where = count % 2 === 0 ? 'opposite gaps' : 'a gap and the one next to opposite';
  return [
    found({
      code: 'tooth-tolerance',
      level: judge(['caution', 2 * kerf > band], ['note', 2 * cut.amount > band]),
      subject: { featureId: 'outline' },
      anchor: bottomOf(teeth),
      field: 'teeth',
      title: `Caliper over ${where} ⌀${length(caliper)}; accepted ${length(limits.least)} to ${length(limits.most)}`,
      says: `The kerf is known to ±${length(kerf)}, which moves this by as much; ISO 9013 class 2 allows a cut ±${length(cut.amount)}. ${2 * Math.max(kerf, cut.amount) > band ? 'The band is narrower: cut three teeth as a coupon, lay the chain in, measure, correct the kerf, then cut the sprocket. ' : ''}A large root lets the chain climb, a small one only lets it sit deep.`,
      value: quantity(caliper, 'mm', kerf),
      limit: quantity(limits.most, 'mm'),
      formula:
        count % 2 === 0
          ? `${digits(2 * gap.seatCentre)} − 2 × ${digits(gap.seat, 3)} = ${digits(caliper)}`
          : `${digits(2 * gap.seatCentre)} cos(90°/${count}) − 2 × ${digits(gap.seat, 3)} = ${digits(caliper)}`,
      source: weakestSource(limits.source, cut.source),
    }),
  ];
}
