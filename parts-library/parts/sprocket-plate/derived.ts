// What follows from chain and teeth: diameters, what a caliper reads, how thick the plate may be, links and centre.
import { chainPull, digits } from '../../checks/index.js';
import { rootLimits, toothRange } from '../../handbook/index.js';
import type { Derived, Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { patternDerived } from '../shared/pattern-derived.js';
import { driveOf } from '../shared/sprocket/check-chain.js';
import { middleField } from './middle.js';
import type { SprocketPlate } from './parameters.js';
import { resolveSprocket } from './resolve.js';
import type { Teeth } from './teeth.js';

function toothDerived(p: SprocketPlate, teeth: Teeth, { format }: DrawContext): readonly Derived[] {
  const { length } = format;
  const { chain, gap, diameters, caliper, root, outside } = teeth;
  const limits = rootLimits(chain, p.teeth, gap.form);
  const range = toothRange(chain);
  const inspected = p.teeth % 2 === 0 ? 'over opposite gaps' : 'over a gap and the next to opposite';
  return [
    {
      id: 'pitch-diameter',
      field: 'teeth',
      title: 'pitch diameter',
      value: { amount: diameters.pitchDiameter, unit: 'mm' },
      text: `⌀${length(diameters.pitchDiameter)}, outside ⌀${length(outside)}, bottoms ⌀${length(root)}`,
    },
    {
      id: 'caliper',
      field: 'teeth',
      title: 'caliper reads',
      value: { amount: caliper, unit: 'mm' },
      text: `${length(caliper)} ${inspected}${limits === undefined ? '' : `; accepted ${length(limits.least)} to ${length(limits.most)}`}`,
    },
    {
      id: 'tooth-thickness',
      field: 'thickness',
      title: 'plate for this chain',
      value: { amount: range.nominal, unit: 'mm' },
      text: `${range.low === undefined ? 'up to' : `${length(range.low)} to`} ${length(range.high)}, inner width ${length(chain.innerWidth)}`,
    },
    {
      id: 'largest-hub',
      field: 'teeth',
      title: 'largest beside it',
      value: { amount: diameters.maxHub, unit: 'mm' },
      text: `⌀${length(diameters.maxHub)}: hub, weld, flange and bolt heads stay inside`,
    },
  ];
}

export function sprocketPlateDerived(
  _part: Part,
  p: SprocketPlate,
  context: DrawContext,
): readonly Derived[] {
  const answer = resolveSprocket(p);
  if (!answer.ok) return [];
  const { teeth, pattern, middle } = answer.value;
  const { length, force } = context.format;
  const drive = driveOf(p, teeth.chain);
  const pull = chainPull({
    chain: teeth.chain,
    teeth: p.teeth,
    torque: p.torque?.value,
    gripMass: p.gripMass?.value,
    tyreDiameter: p.tyreDiameter?.mm,
    grip: p.grip.value,
  });
  return [
    ...toothDerived(p, teeth, context),
    ...(pattern === undefined ? [] : [patternDerived(pattern, context, 'bolt circle')]),
    ...(middle === undefined
      ? []
      : [
          {
            id: 'middle',
            field: middleField(p),
            title: 'middle',
            value: { amount: middle.centre.finished, unit: 'mm' as const },
            text: `⌀${length(middle.centre.finished)} finished${middle.centre.drawn === middle.centre.finished ? '' : `, cut ⌀${length(middle.centre.drawn)}`}`,
          },
        ]),
    ...(drive === undefined
      ? []
      : [
          {
            id: 'links',
            field: 'centreDistance',
            title: 'chain',
            value: { amount: drive.evenLinks, unit: 'links' as const },
            text: `${drive.evenLinks} links${drive.evenCentre === undefined ? '' : ` at ${length(drive.evenCentre)} between centres`} (${digits(drive.links)} at ${length(p.centreDistance?.mm ?? 0)}), wrap ${digits(drive.wrap, 1)}°`,
          },
        ]),
    ...(pull === undefined
      ? []
      : [
          {
            id: 'pull',
            field: 'torque',
            title: 'chain pull',
            value: { amount: pull.newtons, unit: 'N' as const },
            text: `${force(pull.newtons)} from ${pull.from}`,
          },
        ]),
  ];
}
