// What a machinist makes of the blank of a disc carrier, one sentence each, with fits and limits.
import type { Format } from '../../model/index.js';
import { fitText } from '../shared/machined-words.js';
import type { DiscCarrier } from './parameters.js';
import type { ResolvedCarrier } from './resolve.js';

/** Sentences for the print's note and the run sheet. */
export function carrierOrders(p: DiscCarrier, r: ResolvedCarrier, format: Format): readonly string[] {
  const { length } = format;
  const side = p.discSide === 'far' ? 'the face away from the hub' : 'the hub’s face';
  return [
    `Face both sides, ${length(p.faceAllowance.mm)} off each, to ${length(r.finished)}, flat and parallel within ${format.fine(p.flatness.mm)}.`,
    `In the same chucking bore the centre from ⌀${length(r.drawn)} to ${fitText(p.hubPilot.mm, p.pilotFit, format)}.`,
    ...(r.depth > 0
      ? [
          `Turn the disc’s seat ${length(r.depth)} deep into ${side}${p.discPilot === 'turned' ? `, leaving a pilot of ${fitText(p.boltedBore.mm, p.shoulderFit, format)}` : ''}; ${length(r.lobe)} stays under the disc’s bolts.`,
        ]
      : ['The disc sits on the faced plate, without a step.']),
    `Drill the bolt holes from the turned bore, on a dividing head or by coordinates: ${r.disc.pattern.count} on ⌀${length(r.disc.circle.diameter)}, ${r.hub.pattern.count} on ⌀${length(r.hub.circle.diameter)}.`,
    `Bolts ${p.boltGrade}. Runout at the disc’s rim ${format.fine(p.runout.mm)} at most.`,
    'The hub’s pilot carries the centring, never the bolts.',
  ];
}
