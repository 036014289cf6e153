// The inspection window: a row of slots or holes over a strand, and the openings round the shafts.
import { circleContour, slotContour, type Point } from '../../geometry/index.js';
import type { CutFeature } from '../../model/index.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import { roundText } from '../shared/words.js';
import { strandHeight, type Drive } from './drive.js';
import type { ChainGuard } from './parameters.js';

/** Middle of the row: over the lower strand, a slot's lower end at the chain's outer side, unless it is put elsewhere. */
export function windowMiddle(p: ChainGuard, drive: Drive): Point {
  const share = p.windowAt.value / 100;
  const strand = -strandHeight(drive, p, share);
  const usual = p.window === 'slots' ? strand + (p.slotLength.mm - drive.height) / 2 : strand;
  return { x: share * p.centres.mm, y: p.windowUp?.mm ?? usual };
}

/** The row of openings; none without a window. */
export function windowFeatures(p: ChainGuard, drive: Drive): Resolved<readonly CutFeature[]> {
  if (p.window === 'none') return { ok: true, value: [] };
  if (p.openings > 1 && p.pitch.mm <= p.opening.mm) {
    return refusal(
      'pitch',
      `Openings ${roundText(p.opening.mm)} mm wide and ${roundText(p.pitch.mm)} mm apart run into each other.`,
    );
  }
  if (p.window === 'slots' && p.slotLength.mm <= p.opening.mm) {
    return refusal(
      'slotLength',
      `A slot ${roundText(p.slotLength.mm)} mm long and ${roundText(p.opening.mm)} mm wide is none; round holes, or longer slots would do.`,
    );
  }
  const middle = windowMiddle(p, drive);
  return {
    ok: true,
    value: Array.from({ length: p.openings }, (_, index): CutFeature => {
      const x = middle.x + (index - (p.openings - 1) / 2) * p.pitch.mm;
      const id = `window.${index + 1}`;
      const name = `window opening ${index + 1}`;
      if (p.window === 'round') {
        return {
          id,
          name,
          purpose: 'opening',
          contour: circleContour({ x, y: middle.y }, p.opening.mm / 2, 'opening'),
          hole: { finish: 'cut', size: p.opening.mm },
        };
      }
      const half = (p.slotLength.mm - p.opening.mm) / 2;
      return {
        id,
        name,
        purpose: 'opening',
        contour: slotContour({ x, y: middle.y - half }, { x, y: middle.y + half }, p.opening.mm, 'opening'),
      };
    }),
  };
}

/** Openings round what comes through: round at the large sprocket, drawn out by the take-up at the small one. */
export function axleFeatures(p: ChainGuard): readonly CutFeature[] {
  const half = p.takeUp.mm / 2;
  const round = (id: string, name: string, x: number, width: number): CutFeature => ({
    id,
    name,
    purpose: 'opening',
    contour: circleContour({ x, y: 0 }, width / 2, 'opening'),
    hole: { finish: 'cut', size: width },
  });
  const large = p.axleLarge.mm + p.axleRoom.mm;
  const small = p.axleSmall.mm + p.axleRoom.mm;
  const name = 'opening for the small sprocket’s shaft';
  return [
    ...(p.axleLarge.mm === 0
      ? []
      : [round('axle.large', 'opening for the large sprocket’s shaft', p.centres.mm, large)]),
    ...(p.axleSmall.mm === 0
      ? []
      : half === 0
        ? [round('axle.small', name, 0, small)]
        : [
            {
              id: 'axle.small',
              name,
              purpose: 'opening' as const,
              contour: slotContour({ x: -half, y: 0 }, { x: half, y: 0 }, small, 'opening'),
            },
          ]),
  ];
}
