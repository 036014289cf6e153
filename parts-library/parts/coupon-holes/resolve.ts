// The holes of a hole ladder: columns of one diameter, rows of one speed.
import { circleContour, rectangleContour, type Point } from '../../geometry/index.js';
import type { CutFeature, Feature, Format } from '../../model/index.js';
import { holeLadderMultiples, holeSpeedRows } from '../../process/index.js';
import { linesOf } from '../shared/coupon/ladder.js';
import { etched, headingOf, speedToSet, textWidth } from '../shared/coupon/lettering.js';
import { couponSetting, metalBetween, type CouponSetting } from '../shared/coupon/setting.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import type { CouponHoles } from './parameters.js';

export interface HoleRow {
  readonly share: number;
  /** As it is set, mm/min. */
  readonly speed: number;
  readonly text: string;
  readonly holes: readonly { readonly id: string; readonly at: Point; readonly diameter: number }[];
}

export interface HoleLadder {
  readonly setting: CouponSetting;
  readonly chartSpeed: number;
  readonly diameters: readonly number[];
  readonly rows: readonly HoleRow[];
  readonly texts: readonly string[];
  readonly width: number;
  readonly height: number;
  readonly features: readonly Feature[];
}

/** Smallest hole in steps of half a millimetre that a pierce has room in: one thickness or four kerfs. */
const smallestHole = (thickness: number, kerf: number): number =>
  Math.ceil(2 * Math.max(thickness, 4 * kerf)) / 2;

/** Columns of a ladder that nobody has set: multiples of the thickness, the smallest what can be cut at all. */
export function usualDiameters(thickness: number, kerf: number): readonly number[] {
  const smallest = smallestHole(thickness, kerf);
  // On thin plate several multiples are too small; larger ones take their place.
  const wanted = [...holeLadderMultiples, 4, 5].map((times) => Math.max(times * thickness, smallest));
  return wanted.filter((size, index) => wanted.indexOf(size) === index).slice(0, holeLadderMultiples.length);
}

const ROUND_TEXT = 3;
const MOST_COLUMNS = 8;

export function holeLadder(p: CouponHoles, format: Format): Resolved<HoleLadder> {
  const answer = couponSetting(p);
  if (!answer.ok) return answer;
  const setting = answer.value;
  const thickness = p.thickness.mm;
  const diameters =
    p.diameters?.lengths.map(({ mm }) => mm).toSorted((a, b) => a - b) ??
    usualDiameters(thickness, setting.row.kerf);
  if (diameters.length > MOST_COLUMNS)
    return refusal('diameters', `${diameters.length} diameters; a ladder takes ${MOST_COLUMNS} at most.`);
  const letters = p.labelHeight.mm;
  const metal = metalBetween(thickness);
  const chartSpeed = p.speed?.value ?? setting.row.startSpeed;
  const rowTexts = holeSpeedRows(p.rows).map((share) => `${Math.round(share * 100)}%`);
  const left = metal + Math.max(...rowTexts.map((text) => textWidth(text, letters))) + ROUND_TEXT;
  const columnTexts = diameters.map((diameter) => format.bare(diameter));
  // A column is as wide as its hole or its figure.
  const widths = diameters.map((diameter, index) =>
    Math.max(diameter, textWidth(columnTexts[index] ?? '', letters) + ROUND_TEXT - metal),
  );
  const columns = widths.map(
    (width, index) => left + widths.slice(0, index).reduce((sum, one) => sum + one + metal, 0) + width / 2,
  );
  const largest = Math.max(...diameters);
  const across = left + widths.reduce((sum, one) => sum + one + metal, 0);
  const heading = linesOf(headingOf('HOLES', p, setting, format), letters, across - 2 * metal);
  const lineHeight = letters + ROUND_TEXT;
  const width = Math.ceil(Math.max(across, ...heading.map((line) => textWidth(line, letters) + 2 * metal)));
  const pitch = largest + metal;
  const top = metal / 2 + (heading.length + 1) * lineHeight;
  const height = Math.ceil(top + p.rows * pitch + metal / 2);
  const rows = holeSpeedRows(p.rows).map((share, row): HoleRow => {
    const y = height - top - pitch / 2 - row * pitch;
    return {
      share,
      speed: speedToSet(share * chartSpeed, format.unit),
      text: rowTexts[row] ?? '',
      holes: diameters.map((diameter, column) => ({
        id: `hole.${row + 1}.${column + 1}`,
        at: { x: columns[column] ?? 0, y },
        diameter,
      })),
    };
  });
  const outline: CutFeature = {
    id: 'outline',
    name: 'outline',
    purpose: 'outline',
    contour: rectangleContour({ centre: { x: width / 2, y: height / 2 }, width, height }, 'outline'),
  };
  const headY = height - metal / 2 - letters / 2;
  return {
    ok: true,
    value: {
      setting,
      chartSpeed,
      diameters,
      rows,
      texts: [...heading, ...rowTexts, ...columnTexts],
      width,
      height,
      features: [
        outline,
        ...rows.flatMap(({ holes, text }) =>
          holes.map(({ id, at, diameter }): CutFeature => ({
            id,
            name: `hole ⌀${format.bare(diameter)} at ${text}`,
            purpose: 'opening',
            contour: circleContour(at, diameter / 2, 'opening'),
            hole: { finish: 'cut', size: diameter },
          })),
        ),
        ...heading.flatMap((line, index) =>
          etched(
            `heading.${index + 1}`,
            'heading',
            line,
            { x: width / 2, y: headY - index * lineHeight },
            letters,
          ),
        ),
        ...columnTexts.flatMap((text, index) =>
          etched(
            `column.${index + 1}`,
            `diameter ${text}`,
            text,
            { x: columns[index] ?? 0, y: headY - heading.length * lineHeight },
            letters,
          ),
        ),
        ...rows.flatMap(({ text, holes }, index) =>
          etched(
            `row.${index + 1}`,
            `speed ${text}`,
            text,
            { x: (left - ROUND_TEXT + metal) / 2, y: holes[0]?.at.y ?? 0 },
            letters,
          ),
        ),
      ],
    },
  };
}
