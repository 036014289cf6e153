// The fields of the chain drive behind the guard, and of the shafts that come through it.
import type { FieldKit } from '../fields/index.js';

export function driveFields(f: FieldKit) {
  const group = 'Chain drive';
  return {
    chain: f.chain.given({
      title: 'Chain',
      help: 'Chain that runs behind the guard.',
      measuring: 'Inner width, roller diameter, and twelve pitches under light tension.',
      group,
      default: '40',
    }),
    small: f.count.given({
      title: 'Small sprocket',
      help: 'Its teeth; it stands on the left.',
      measuring: 'Count them.',
      group,
      min: 9,
      max: 80,
      default: 12,
    }),
    large: f.count.given({
      title: 'Large sprocket',
      help: 'Its teeth.',
      measuring: 'Count them.',
      group,
      min: 9,
      max: 120,
      default: 40,
    }),
    centres: f.length.given({
      title: 'Centre distance',
      help: 'From shaft to shaft, in the middle of the take-up.',
      measuring: 'Outside to outside of both shafts, less half of each.',
      group,
      min: 30,
      max: 3000,
      default: '376 mm',
    }),
    takeUp: f.length.given({
      title: 'Take-up',
      help: 'How far the small sprocket moves when the chain is tightened, from end to end; the guard covers it all the way.',
      group,
      min: 0,
      max: 200,
      default: '12 mm',
    }),
    room: f.length.given({
      title: 'Room round the chain',
      help: 'From the chain as it runs to the edge of the guard.',
      measuring: 'Push the loose strand to and fro: half of its movement is the least.',
      group,
      min: 0,
      max: 300,
      default: '16 mm',
    }),
    behind: f.length.given({
      title: 'Chain behind the plate',
      help: 'From the back of the guard to the nearest part of chain or sprocket.',
      measuring: 'Depth rod from the face that the guard is bolted to, to the chain’s pins.',
      group,
      min: 1,
      max: 500,
      default: '25 mm',
    }),
    axleSmall: f.length.given({
      title: 'Small sprocket’s shaft',
      help: 'Diameter of what comes through the guard there; 0 when nothing does.',
      measuring: 'Caliper over shaft or nut, whichever is larger.',
      group,
      min: 0,
      max: 200,
      default: '0 mm',
    }),
    axleLarge: f.length.given({
      title: 'Large sprocket’s shaft',
      help: 'Diameter of what comes through the guard there; 0 when nothing does.',
      measuring: 'Caliper over shaft or hub, whichever is larger.',
      group,
      min: 0,
      max: 400,
      usual: [20, 40],
      default: '30 mm',
    }),
    axleRoom: f.length.given({
      title: 'Room round the shafts',
      help: 'How much larger their openings are, on diameter; the small sprocket’s is drawn out by the take-up as well.',
      group,
      min: 1,
      max: 100,
      default: '8 mm',
    }),
  };
}

export function windowFields(f: FieldKit) {
  const group = 'Inspection window';
  const any = { field: 'window', values: ['slots', 'round'] } as const;
  return {
    window: f.choice({
      title: 'Window',
      help: 'slots: upright ones side by side; round: holes side by side. Chain and slack are seen through them.',
      group,
      choices: [
        { value: 'slots', label: 'Slots' },
        { value: 'round', label: 'Round holes' },
        { value: 'none', label: 'None' },
      ],
      default: 'slots',
    }),
    openings: f.count.given({
      title: 'Openings',
      help: 'How many stand side by side.',
      group,
      min: 1,
      max: 24,
      default: 5,
      appliesWhen: any,
    }),
    opening: f.length.given({
      title: 'Opening width',
      help: 'Width of a slot or diameter of a hole: what a finger meets. 8 mm keeps fingers out from 20 mm on.',
      measuring: 'The feeler is your smallest finger.',
      group,
      min: 3,
      max: 60,
      usual: [7, 8],
      default: '8 mm',
      appliesWhen: any,
    }),
    slotLength: f.length.given({
      title: 'Slot length',
      help: 'Over all, across the chain.',
      group,
      min: 5,
      max: 400,
      default: '45 mm',
      appliesWhen: { field: 'window', values: ['slots'] },
    }),
    pitch: f.length.given({
      title: 'Openings apart',
      help: 'From middle to middle.',
      group,
      min: 5,
      max: 200,
      default: '18 mm',
      appliesWhen: any,
    }),
    windowAt: f.percent.given({
      title: 'Window along the centres',
      help: 'Middle of the row, as a share of the way from the small to the large shaft.',
      group,
      min: 0,
      max: 100,
      default: '50 %',
      appliesWhen: any,
    }),
    windowUp: f.length.maybe({
      title: 'Window above the centre line',
      help: 'Middle of the row over the line of shafts; negative below it. Left out: over the lower strand, where the slack is seen.',
      group,
      min: -600,
      max: 600,
      usual: [-50, 40],
      appliesWhen: any,
    }),
  };
}
