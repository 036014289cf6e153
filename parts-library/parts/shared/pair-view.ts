// A pair of ears seen from its edge, beside the flat part: plates, what stands between them, the pin through all.
import type { Ghost } from '../../model/index.js';
import { boxGhost, lineGhost } from './mating.js';

export interface PairView {
  /** Where the view begins, mm. */
  readonly left: number;
  readonly thickness: number;
  readonly foot: number;
  readonly top: number;
  readonly pinHeight: number;
  /** Pin or tube through the ears. */
  readonly pin: number;
  /** Inside of one ear to inside of the other; none for a single ear. */
  readonly gap?: number | undefined;
  /** What stands between them. */
  readonly between?: { readonly width: number; readonly height: number; readonly label: string } | undefined;
}

/** How far the pin's middle line runs out of the ears, in pin diameters. */
const PIN_BEYOND = 0.8;

export function pairView(view: PairView): readonly Ghost[] {
  const { left, thickness, foot, top, pinHeight, pin, gap, between } = view;
  const right = left + thickness + (gap === undefined ? 0 : gap + thickness);
  const ear = (id: string, x: number, label?: string): Ghost =>
    boxGhost(id, 'folded', { x: [x, x + thickness], y: [foot, top] }, label);
  const middle = left + thickness + (gap ?? 0) / 2;
  const line = (id: string, y: number): Ghost =>
    lineGhost(id, 'mating-part', { x: left - PIN_BEYOND * pin, y }, { x: right + PIN_BEYOND * pin, y });
  return [
    ear('edge-view.1', left, 'from the edge'),
    ...(gap === undefined ? [] : [ear('edge-view.2', left + thickness + gap)]),
    ...(between === undefined
      ? []
      : [
          boxGhost(
            'edge-view.between',
            'mating-part',
            {
              x: [middle - between.width / 2, middle + between.width / 2],
              y: [pinHeight - between.height / 2, pinHeight + between.height / 2],
            },
            between.label,
          ),
        ]),
    line('edge-view.pin-low', pinHeight - pin / 2),
    line('edge-view.pin-high', pinHeight + pin / 2),
  ];
}
