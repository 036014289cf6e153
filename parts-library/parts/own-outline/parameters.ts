// Parameters of an own outline: the drawing, how large and which way round it is made, and what its plate is.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { plateFields } from '../shared/plate-fields.js';
import { startDrawing } from './start-drawing.js';

function sizeFields(f: FieldKit) {
  const group = 'Size and place';
  return {
    width: f.length.maybe({
      title: 'Overall width',
      help: 'The width wanted, as the part lies here; the whole drawing is scaled evenly to it, holes too. Left out: as drawn.',
      measuring: 'Caliper or rule over the widest place.',
      group,
      min: 5,
      max: 6000,
    }),
    height: f.length.maybe({
      title: 'Overall height',
      help: 'The height wanted, as the part lies here; the whole drawing is scaled evenly to it. Left out: as drawn.',
      measuring: 'Caliper or rule over the highest place.',
      group,
      min: 5,
      max: 6000,
    }),
    scale: f.factor.given({
      title: 'Scale',
      help: 'How much larger than drawn it is made, where neither width nor height is given. 25.4 makes inches of millimetres.',
      group,
      min: 0.01,
      max: 100,
      default: 1,
    }),
    turn: f.angle.given({
      title: 'Turned by',
      help: 'Counter-clockwise from how it was drawn.',
      group,
      min: -360,
      max: 360,
      default: '0°',
    }),
    mirrored: f.choice({
      title: 'Other hand',
      help: 'Mirrored left to right before it is turned: the part for the other side.',
      group,
      choices: [
        { value: 'no', label: 'As drawn' },
        { value: 'yes', label: 'Mirrored' },
      ],
      default: 'no',
    }),
  };
}

export function ownOutlineParameters(f: FieldKit) {
  return z.strictObject({
    drawing: f.drawing(
      {
        title: 'Drawing',
        help: 'A DXF or SVG file that was brought in: its outline, openings, lines and marks, and what is done along each.',
        group: 'Drawing',
      },
      startDrawing,
    ),
    ...sizeFields(f),
    markUpTo: f.length.maybe({
      title: 'Holes to drill up to',
      help: 'Round holes up to this size become centre marks, to be punched and drilled. Left out: all are cut.',
      measuring: 'The largest drill at hand, or what the torch cuts badly.',
      group: 'Holes',
      min: 1,
      max: 50,
      usual: [4, 20],
    }),
    use: f.choice({
      title: 'Use',
      help: 'What hangs on the part: it gets the caution that goes with it.',
      group: 'Holes',
      choices: [
        { value: 'other', label: 'Other' },
        { value: 'drive', label: 'Drive' },
        { value: 'brake', label: 'Brake' },
        { value: 'steering', label: 'Steering' },
        { value: 'tow', label: 'Tow' },
        { value: 'lift', label: 'Lift' },
      ],
      default: 'other',
    }),
    ...plateFields(f),
  });
}

export type OwnOutline = z.output<ReturnType<typeof ownOutlineParameters>>;
