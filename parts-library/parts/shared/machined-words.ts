// Words of a machined blank: fits with their limits, what the machinist does, remedies inside the second pattern.
import { fitLimits, type ToleranceClass } from '../../handbook/index.js';
import type { Finding, Format, JsonObject, ShopStep } from '../../model/index.js';
import type { SizedHole } from './holes.js';

/**
 * A diameter with its ISO 286 class and limits of size.
 * @example fitText(40, 'H7', format) // '⌀40 H7 (40 to 40.025)'
 */
export function fitText(diameter: number, toleranceClass: ToleranceClass, format: Format): string {
  const limits = fitLimits(toleranceClass, diameter);
  const size = `⌀${format.bare(diameter)} ${toleranceClass}`;
  if (!limits.found) return `${size} (limits not held for this size)`;
  const { lower, upper } = limits.row;
  const fine = (mm: number): string => format.fine(mm).replace(/ (mm|in)$/, '');
  return `${size} (${fine(diameter + lower)} to ${fine(diameter + upper)})`;
}

/** Parameters are plain JSON once they are read. */
const isPlain = (value: unknown): value is JsonObject => typeof value === 'object' && value !== null;

/**
 * Remedies that reach into the second pattern, which may not have been typed yet: they put the whole pattern as it
 * was read, with the one value changed.
 */
export function remediesOfGroup(findings: readonly Finding[], pattern2: unknown): readonly Finding[] {
  if (!isPlain(pattern2)) return findings;
  return findings.map((finding) =>
    finding.remedies === undefined
      ? finding
      : {
          ...finding,
          remedies: finding.remedies.map((remedy) => ({
            ...remedy,
            change: remedy.change.map((operation) => {
              const inside = operation.op === 'add' && /^\/pattern2\/(\w+)$/.exec(operation.path);
              if (operation.op !== 'add' || inside === false || inside === null) return operation;
              const group = { ...pattern2, [inside[1] ?? '']: operation.value };
              return { op: 'add' as const, path: '/pattern2', value: group };
            }),
          })),
        },
  );
}

/** What comes before any machining, and what the machinist is told first. */
export function blankSteps(): readonly ShopStep[] {
  return [
    { kind: 'deburr', says: 'Scrape dross, break the edges, take the scale off where it is clamped.' },
    {
      kind: 'measure',
      says: 'Measure the centre opening and the thickness: both must still hold the allowance that is machined off.',
    },
    {
      kind: 'caution',
      says: 'This is a blank. It goes to somebody with a lathe who can set it up true; holes marked here are found again from the turned bore, not from the marks.',
    },
  ];
}

/** Bolt holes of a machined part: by coordinates from the turned bore; nothing where the torch cuts them. */
export function machinedHoleSteps(
  size: SizedHole,
  pattern: { readonly circle: number; readonly holes: readonly { readonly featureId: string }[] },
  { length }: Format,
): readonly ShopStep[] {
  if (size.made === 'clearance' || size.made === 'plain') return [];
  const featureIds = pattern.holes.map(({ featureId }) => featureId);
  const name = size.drill === '' || size.drill.endsWith('mm') ? '' : ` (${size.drill})`;
  const drilled: ShopStep = {
    kind: 'drill',
    says: `Drill ${featureIds.length} × ⌀${length(size.diameter)}${name} on ⌀${length(pattern.circle)} from the turned bore, on a dividing head or by coordinates; the etched marks only show where.`,
    featureIds,
  };
  return size.made === 'tapped'
    ? [
        drilled,
        {
          kind: 'tap',
          says: `Tap ${featureIds.length} × ${size.thread.name}, square to the seat.`,
          featureIds,
        },
      ]
    : [drilled];
}

/** What ends the work: bolted up, indicated, checked by somebody else. */
export function provingSteps(rim: string, limit: string): readonly ShopStep[] {
  return [
    {
      kind: 'fit',
      says: 'Bolt it up dry: every seat bears metal to metal, no bolt has to be pulled into its hole.',
    },
    { kind: 'indicate', says: `Indicate ${rim} through one turn: ${limit} full reading at most.` },
    {
      kind: 'caution',
      says: 'Have a qualified person check it before it is driven; tighten again after the first hour and look for cracks and rubbing.',
    },
  ];
}
