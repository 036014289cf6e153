// The fields of a blank that a machinist finishes: its release, what is left on it, and how true the seats become.
import type { FieldKit } from '../fields/index.js';

/** Fits in which a pilot bore is turned. */
export const BORE_FITS = [
  { value: 'H7', label: 'H7, locating' },
  { value: 'H8', label: 'H8, easy' },
] as const;

/** Fits in which a standing pilot is turned. */
export const SHOULDER_FITS = [
  { value: 'h6', label: 'h6, close' },
  { value: 'f7', label: 'f7, slips in' },
] as const;

/** @param rim what the runout is read on, for example `the disc’s rim` */
export function machinedFields(f: FieldKit, rim: string, runout: string) {
  const group = 'Machining';
  return {
    release: f.choice({
      title: 'Release',
      help: 'withheld: nothing is written; machined: the cut plate is a blank, with allowance on bores and faces, for somebody who machines and checks it.',
      group,
      choices: [
        { value: 'withheld', label: 'Withheld' },
        { value: 'machined', label: 'Blank to be machined' },
      ],
      default: 'withheld',
    }),
    boreAllowance: f.length.given({
      title: 'Left in the bore',
      help: 'How much smaller the centre is cut, on diameter, than it is turned to.',
      group,
      min: 2,
      max: 12,
      default: '4 mm',
    }),
    faceAllowance: f.length.given({
      title: 'Left on each face',
      help: 'What is faced off on each side to make the seats flat and parallel; scale and lean of the cut go with it.',
      group,
      min: 0.3,
      max: 5,
      default: '1 mm',
    }),
    flatness: f.length.given({
      title: 'Flatness of the seats',
      help: 'Flatness and parallelism that the machined seats are held to.',
      measuring: 'Dial indicator over the seat on a surface plate.',
      group,
      min: 0.005,
      max: 0.2,
      default: '0.03 mm',
    }),
    runout: f.length.given({
      title: 'Runout limit',
      help: `Full indicator reading allowed on ${rim}, bolted up, through one turn.`,
      measuring: `Dial indicator on ${rim}, one turn, bearing play taken up.`,
      group,
      min: 0.02,
      max: 2,
      default: runout,
    }),
    hubRunout: f.length.maybe({
      title: 'Runout of the hub face',
      help: 'What the hub’s own face shows near its bolts, before anything is put on it.',
      measuring: 'Dial indicator on the clean hub face at the bolt circle, one turn.',
      group,
      min: 0,
      max: 1,
    }),
  };
}

/** The hub's pilot and the fit of the bore on it. */
export function hubPilotFields(f: FieldKit, start: string) {
  const group = 'Hub';
  return {
    hubPilot: f.length.given({
      title: 'Hub pilot',
      help: 'Diameter of the hub’s spigot that centres the part; the bore is turned to it.',
      measuring: 'Micrometer over the clean spigot, two directions; take the larger.',
      group,
      min: 10,
      max: 250,
      default: start,
    }),
    pilotFit: f.choice({
      title: 'Fit on the hub',
      help: 'ISO 286 class of the bore on the pilot as measured.',
      group,
      choices: BORE_FITS,
      default: 'H7',
    }),
    hubPilotHeight: f.length.maybe({
      title: 'Hub pilot stands out',
      help: 'How far the spigot stands out from the hub’s face.',
      measuring: 'Depth rod from the top of the spigot to the hub’s face.',
      group,
      min: 0.5,
      max: 200,
    }),
  };
}
