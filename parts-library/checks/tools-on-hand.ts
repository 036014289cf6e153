// Whether the shop can do by hand what the part asks for: a drill for every drilled hole, a tap, a press for every bend.
import { findMaterial, findThread, strengthAt, type Source } from '../handbook/index.js';
import { isLine, type Feature, type Finding, type Hole, type Part } from '../model/index.js';
import { drillOnHand, hasTap } from '../process/index.js';
import type { Facts } from './facts.js';
import { digits, found, judge, quantity } from './findings.js';

/** A drill within this of what is wanted makes the hole, mm; closer than drills themselves cut. */
const SAME_DRILL = 0.05;

const ON_HAND: Source = {
  title: 'Tools on hand',
  where: 'the drills, taps and press that the shop has listed',
  certainty: 'common practice',
};

const BEND_FORCE: Source = {
  title: 'Force to air bend plate',
  where: 'F = 1.42 σ T² L ÷ V, V 8 T; the usual press-brake formula',
  certainty: 'from memory',
};
const FORCE_FACTOR = 1.42;
const V_OVER_T = 8;

interface HandHole {
  readonly featureId: string;
  readonly name: string;
  readonly hole: Hole;
  readonly at: { readonly x: number; readonly y: number } | undefined;
}

const drilledBy: ReadonlySet<Hole['finish']> = new Set(['drill', 'tap', 'ream']);

function handHoles(features: readonly Feature[]): readonly HandHole[] {
  return features.flatMap((feature): readonly HandHole[] => {
    if (feature.purpose !== 'mark' && feature.purpose !== 'opening') return [];
    const { hole } = feature;
    if (hole === undefined || !drilledBy.has(hole.finish)) return [];
    const at = feature.purpose === 'mark' ? feature.at : undefined;
    return [{ featureId: feature.id, name: feature.name, hole, at }];
  });
}

/** Each size of hole once. */
function bySize(holes: readonly HandHole[]): readonly HandHole[] {
  const seen = new Set<string>();
  return holes.filter(({ hole }) => {
    const key = `${hole.finish} ${hole.size.toFixed(3)} ${hole.thread ?? ''}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** Drilled and tapped holes that no bit or tap on hand makes. */
function checkDrills(part: Part, facts: Facts): readonly Finding[] {
  const { tools } = facts;
  if (tools === undefined) return [];
  const { length } = facts.format;
  return bySize(handHoles(part.features)).flatMap(({ featureId, name, hole, at }): readonly Finding[] => {
    const place = { subject: { featureId }, ...(at === undefined ? {} : { anchor: at }), source: ON_HAND };
    const nearest = drillOnHand(tools, hole.size);
    const off = nearest === undefined ? Infinity : Math.abs(nearest.diameter - hole.size);
    const isTooLarge = hole.size > tools.largestDrill;
    const drill: readonly Finding[] =
      off <= SAME_DRILL && !isTooLarge
        ? []
        : [
            found({
              ...place,
              code: 'no-drill',
              level: 'caution',
              title: isTooLarge
                ? `${name}: ⌀${length(hole.size)} is more than the press takes (${length(tools.largestDrill)})`
                : `${name}: no drill of ⌀${length(hole.size)} on hand`,
              says:
                nearest === undefined || isTooLarge
                  ? 'Cut it with the torch where that will do, bore it, or have it drilled.'
                  : `The nearest is ${nearest.name}, ${length(Math.abs(nearest.diameter - hole.size))} ${nearest.diameter > hole.size ? 'larger' : 'smaller'}. Buy the drill, or set a hole that one on hand makes.`,
              value: quantity(hole.size, 'mm'),
              limit: quantity(isTooLarge ? tools.largestDrill : (nearest?.diameter ?? 0), 'mm'),
            }),
          ];
    const thread = hole.finish === 'tap' && hole.thread !== undefined ? findThread(hole.thread) : undefined;
    const tap: readonly Finding[] =
      thread === undefined || !thread.found || hasTap(tools, thread.row)
        ? []
        : [
            found({
              ...place,
              code: 'no-tap',
              level: 'caution',
              title: `${name}: no ${thread.row.name} tap on hand`,
              says: 'Buy the tap, take a thread whose tap is on hand, or weld a nut behind a clearance hole.',
            }),
          ];
    return [...drill, ...tap];
  });
}

/** Bends longer or stiffer than what is on hand can make. */
function checkBends(part: Part, facts: Facts): readonly Finding[] {
  const bending = facts.tools?.bending;
  const material = findMaterial(part.material);
  const band = material.found ? strengthAt(material.row, part.thickness) : undefined;
  if (bending === undefined || band === undefined) return [];
  const { length, force } = facts.format;
  const ultimate = band.tensileMegapascals;
  return part.features.filter(isLine).flatMap((feature): readonly Finding[] => {
    const [a, b] = [feature.path.vertices[0], feature.path.vertices.at(-1)];
    if (feature.bend === undefined || a === undefined || b === undefined) return [];
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    const t = part.thickness;
    const newtons = (FORCE_FACTOR * ultimate * t * t * long) / (V_OVER_T * t);
    const isTooLong = long > bending.longest;
    return [
      found({
        code: 'bend-force',
        level: judge(['caution', isTooLong || newtons > bending.newtons]),
        subject: { featureId: feature.id },
        anchor: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 },
        title: isTooLong
          ? `${feature.name} is ${length(long)} long, the press takes ${length(bending.longest)}`
          : `${feature.name} wants about ${force(newtons)}, the press has ${force(bending.newtons)}`,
        says:
          isTooLong || newtons > bending.newtons
            ? 'Slots along the line, folded and welded, need far less; or have it bent.'
            : 'Within what the press on hand gives.',
        value: quantity(newtons, 'N'),
        limit: quantity(bending.newtons, 'N'),
        formula: `1.42 × ${digits(ultimate, 0)} × ${digits(t)}² × ${digits(long, 1)} ÷ (8 × ${digits(t)}) = ${digits(newtons, 0)} N`,
        source: BEND_FORCE,
      }),
    ];
  });
}

/** What the tools on hand cannot do to this part. Nothing is said of a shop that has not listed its tools. */
export const checkToolsOnHand = (part: Part, facts: Facts): readonly Finding[] => [
  ...checkDrills(part, facts),
  ...checkBends(part, facts),
];
