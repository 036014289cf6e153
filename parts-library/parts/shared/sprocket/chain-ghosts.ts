// Ghosts of a chain on its sprocket: pitch circle, inner edges of the side plates, a few rollers.
import { pitchDiameter, sidePlateCircle, type Chain } from '../../../handbook/index.js';
import type { Format, Ghost } from '../../../model/index.js';

const MIDDLE = { x: 0, y: 0 };

/** Rollers shown, the middle one on top; more of them hide the teeth. */
const SHOWN = 5;

/** Pitch circle with the chain's number, and the circle that nothing beside the sprocket may pass. */
export function chainGhosts(chain: Chain, teeth: number, { bare }: Format): readonly Ghost[] {
  const pitch = pitchDiameter(chain.pitch, teeth);
  const sides = sidePlateCircle(chain, teeth);
  return [
    {
      id: 'chain.pitch',
      kind: 'chain',
      label: `${chain.name} chain, pitch ⌀${bare(pitch)}`,
      shape: { circle: { centre: MIDDLE, radius: pitch / 2 } },
    },
    ...(sides === undefined || sides <= 0
      ? []
      : [
          {
            id: 'chain.sides',
            kind: 'chain' as const,
            label: `side plates ⌀${bare(sides)}`,
            shape: { circle: { centre: MIDDLE, radius: sides / 2 } },
          },
        ]),
  ];
}

/** Rollers lying in the topmost gaps. */
export function rollerGhosts(chain: Chain, teeth: number): readonly Ghost[] {
  const radius = pitchDiameter(chain.pitch, teeth) / 2;
  return Array.from({ length: SHOWN }, (_, index): Ghost => {
    const angle = Math.PI / 2 + ((index - (SHOWN - 1) / 2) * 2 * Math.PI) / teeth;
    return {
      id: `chain.roller.${index + 1}`,
      kind: 'chain',
      shape: {
        circle: {
          centre: { x: radius * Math.cos(angle), y: radius * Math.sin(angle) },
          radius: chain.roller / 2,
        },
      },
    };
  });
}
