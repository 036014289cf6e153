// What a machinist makes of the blank of a wheel-hub adapter, one sentence each, with fits and limits.
import type { Format } from '../../model/index.js';
import { fitText } from '../shared/machined-words.js';
import type { WheelHubAdapter } from './parameters.js';
import type { ResolvedAdapter } from './resolve.js';

const CENTRING: Readonly<Record<WheelHubAdapter['wheelPilot'], string>> = {
  spigot: 'Hub-centric: pilots carry the centring on both sides, never the studs.',
  hub: 'Hub-centric: the hub’s own pilot reaches through and centres the wheel.',
  studs: 'Not hub-centric: cone seats alone centre the wheel; tighten in turns, wheel off the ground.',
};

/** `5 studs M12x1.5, 10.9, 30 mm out of the seat, pressed into ⌀14.2` */
export function studText(p: WheelHubAdapter, r: ResolvedAdapter, { length }: Format): string {
  const { pattern, size } = r.wheel;
  const how =
    p.studs === 'pressed'
      ? `pressed into ⌀${length(size.diameter)} reamed, knurl ⌀${length(p.knurl.mm)}`
      : `screwed ${length(r.flange)} deep and locked`;
  return `${pattern.count} studs ${pattern.thread.name}, ${p.studGrade}, ${length(p.studLength.mm)} out of the seat, ${how}`;
}

/** Sentences for the print's note and the run sheet. */
export function adapterOrders(p: WheelHubAdapter, r: ResolvedAdapter, format: Format): readonly string[] {
  const { length } = format;
  return [
    `Face both sides, ${length(p.faceAllowance.mm)} off each; seats ${length(r.flange)} apart, flat and parallel within ${format.fine(p.flatness.mm)}.`,
    `In the same chucking bore the centre from ⌀${length(r.drawn)} to ${fitText(p.hubPilot.mm, p.pilotFit, format)}${p.wheelPilot === 'spigot' ? ` and turn the wheel’s spigot to ${fitText(p.pattern2.boltedBore.mm, p.spigotFit, format)}, ${length(p.spigot.mm)} high` : ''}.`,
    `Drill the bolt holes from the turned bore, on a dividing head or by coordinates: ${r.hub.pattern.count} on ⌀${length(r.hub.circle.diameter)}, ${r.wheel.pattern.count} on ⌀${length(r.wheel.circle.diameter)}.`,
    `${studText(p, r, format)}. Wheel nuts ${p.seat === 'cone' ? 'with a 60° cone' : 'with a flat seat'}, as the wheel is made.`,
    `Runout at the rim ${format.fine(p.runout.mm)} at most.`,
    CENTRING[p.wheelPilot],
  ];
}
