// The fields of the teeth: form, outside, how their faces are made.
import type { FieldKit } from '../fields/index.js';

export function toothFields(f: FieldKit) {
  const group = 'Chain and teeth';
  return {
    form: f.maybeChoice({
      title: 'Tooth form',
      help: 'ansi: ASME B29.1 Type II; iso: inside the ISO 606 limits, greatest seat. Left out: ANSI for the ANSI numbers, ISO for all others.',
      group,
      choices: [
        { value: 'ansi', label: 'ANSI B29.1 Type II' },
        { value: 'iso', label: 'ISO 606' },
      ],
    }),
    outside: f.length.maybe({
      title: 'Outside diameter',
      help: 'Over the tips. Left out: P (0.6 + cot 180°/N) with the ANSI form, the least of ISO 606 with the other. Smaller leaves a broader tip for the torch.',
      measuring: 'Caliper over opposite tips of the old sprocket; worn tips read small.',
      group,
      min: 15,
      max: 1000,
    }),
    faces: f.choice({
      title: 'Faces of the teeth',
      help: 'as-cut; chamfered: both edges of the tips broken so that the chain finds its way; faced: the teeth turned down to the thickness that the chain wants.',
      group,
      choices: [
        { value: 'as-cut', label: 'As cut' },
        { value: 'chamfered', label: 'Chamfered' },
        { value: 'faced', label: 'Turned down' },
      ],
      default: 'as-cut',
    }),
  };
}
