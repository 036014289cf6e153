// The fields of the chain: its number or what is measured of it, its length, the centres, and how it is kept tight.
import type { FieldKit } from '../parts/index.js';

const GROUP = 'Chain';

export function chainFields(f: FieldKit) {
  return {
    chain: f.chain.maybe({
      title: 'Chain',
      help: 'Number stamped on the plates, for example 08B, 40, 428. Left out: found from what is measured.',
      group: GROUP,
      suggestions: ['35', '40', '41', '50', '06B', '08B', '10B', '420', '428', '520', '530'],
    }),
    innerWidth: f.length.maybe({
      title: 'Inner width',
      help: 'Between the inner plates: what a sprocket’s teeth go into.',
      measuring: 'Inside jaws of the caliper between the two plates that hold a roller.',
      group: GROUP,
      min: 1,
      max: 60,
    }),
    roller: f.length.maybe({
      title: 'Roller diameter',
      help: 'Over one roller; on sizes 25 and 35 the bushing.',
      measuring: 'Caliper over a roller that turns freely, near its middle.',
      group: GROUP,
      min: 1,
      max: 50,
    }),
    twelvePitches: f.length.maybe({
      title: 'Twelve pitches',
      help: 'Length over twelve pitches; it tells the pitch and the wear.',
      measuring:
        'Chain laid flat under light tension: from one edge of a pin to the same edge of the twelfth pin after it.',
      group: GROUP,
      min: 50,
      max: 700,
    }),
    links: f.count.maybe({
      title: 'Links',
      help: 'Pitches in the closed chain, joining link included. Left out: from the centre distance.',
      measuring: 'Count the pins along one side and take one for each.',
      group: GROUP,
      min: 12,
      max: 1000,
    }),
    centres: f.length.maybe({
      title: 'Centre distance',
      help: 'Motor shaft to axle. Left out: from the links.',
      measuring: 'Over the outsides of both shafts, less half of each diameter.',
      group: GROUP,
      min: 30,
      max: 5000,
    }),
    tensioner: f.choice({
      title: 'Kept tight by',
      help: 'What takes the slack up as the chain wears.',
      group: GROUP,
      choices: [
        { value: 'slots', label: 'Moving motor or axle' },
        { value: 'idler', label: 'Idler on the loose strand' },
        { value: 'none', label: 'Nothing' },
      ],
      default: 'slots',
    }),
    takeUp: f.length.maybe({
      title: 'Travel of it',
      help: 'How far the motor’s slots, the axle or the idler can move from where the new chain runs.',
      group: GROUP,
      min: 0,
      max: 500,
      appliesWhen: { field: 'tensioner', values: ['slots', 'idler'] },
    }),
  };
}

/** How the slack is taken up. */
export type Tensioner = 'slots' | 'idler' | 'none';
