// Draws a tab: outside, hole, label; the middle of the weld edge is the origin.
import type { Feature, Part, Staged } from '../../model/index.js';
import { holeFeature } from '../shared/holes.js';
import { etchLabel, noRoomForLabel, placesOver } from '../shared/label.js';
import { refuseToDraw } from '../shared/refuse.js';
import { tabAbout } from './about.js';
import type { Tab } from './parameters.js';
import { resolveTab } from './resolve.js';

/** The half of a hole that the pin presses on lies up, towards the nose: segment 1 of a clockwise circle. */
const PRESSED = [{ segment: 1, role: 'bearing' as const }];

export function drawTab(p: Tab): Staged<Part | undefined> {
  const answer = resolveTab(p);
  if (!answer.ok) return refuseToDraw('tab', answer.field, answer.says);
  const { outline, size } = answer.value;
  const hole = holeFeature('hole', 'pin hole', outline.centre, size);
  const plain: readonly Feature[] = [
    {
      id: 'outline',
      name: 'outline',
      purpose: 'outline',
      contour: outline.contour,
      edges: outline.edges,
    },
    hole.purpose === 'opening' ? { ...hole, edges: PRESSED } : hole,
  ];
  const label = etchLabel(p.label, p.labelHeight.mm, plain, placesOver(plain));
  return {
    value: {
      family: tabAbout.id,
      name: p.ears === 'pair' ? 'Tab, one of a pair' : 'Tab',
      features: [...plain, ...(label ?? [])],
      material: p.material,
      thickness: p.thickness.mm,
      quantity: p.ears === 'pair' ? 2 : 1,
    },
    findings: label === undefined ? [noRoomForLabel(p.label ?? '')] : [],
  };
}
