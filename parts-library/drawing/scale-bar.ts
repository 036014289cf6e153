// A bar of a stated real length, so that a print that was shrunk on its way still tells its size.
import { growBox, uprightBox } from './boxes.js';
import { costOfText, drawLine, drawWords, measureWords, type Desk } from './desk.js';
import { listOptions, type Option, type Options } from './labels.js';

const MM_PER_INCH = 25.4;

/** Lengths worth a bar, in the job's unit, and how inch fractions are written. */
const LENGTHS: Readonly<Record<'mm' | 'in', readonly number[]>> = {
  mm: [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000],
  in: [0.125, 0.25, 0.5, 1, 2, 5, 10, 20, 50, 100, 200],
};
const FRACTIONS: Readonly<Record<string, string>> = { '0.125': '1/8', '0.25': '1/4', '0.5': '1/2' };

/** The corners that it may stand in, dearest last: lower left by custom. */
const CORNERS = [
  { right: false, top: false, cost: 0 },
  { right: true, top: false, cost: 1 },
  { right: false, top: true, cost: 2 },
  { right: true, top: true, cost: 3 },
];

/** The longest bar of a round length within a fifth of the area's width, in any corner that is free. */
export function scaleBarOptions(desk: Desk, unit: 'mm' | 'in'): Options {
  const { area, placing, style } = desk;
  const perUnit = (unit === 'mm' ? 1 : MM_PER_INCH) * placing.scale;
  const most = Math.max((area.maxX - area.minX) / 5, style.size * 4);
  const length = LENGTHS[unit].findLast((candidate) => candidate * perUnit <= most) ?? LENGTHS[unit][0] ?? 1;
  const words = measureWords(`${FRACTIONS[String(length)] ?? length} ${unit}`, style.small, 'scale-bar');
  const width = length * perUnit;
  const tall = style.size * 0.4;
  const space = style.pad * 1.5;
  const whole = width + space + words.width;

  const options = CORNERS.flatMap(({ right, top, cost }): readonly Option[] => {
    const left = right ? area.maxX - whole : area.minX;
    const bottom = top ? area.minY + style.small * 0.9 : area.maxY - style.small * 0.22;
    const box = uprightBox(left, bottom - style.small * 0.8, left + whole, bottom + style.small * 0.2);
    const standing = costOfText(desk, box);
    if (standing === Infinity) return [];
    return [
      {
        cost: cost + standing,
        box: growBox(box, style.size * 0.5),
        lines: [],
        extensions: [],
        strip: null,
        draw: () => [
          drawLine(
            'scale-bar',
            [
              ['M', left, bottom - tall],
              ['L', left, bottom],
              ['L', left + width, bottom],
              ['L', left + width, bottom - tall],
              ['M', left + width / 2, bottom - tall * 0.6],
              ['L', left + width / 2, bottom],
            ],
            {},
          ),
          drawWords(words, left + width + space, bottom, 'start'),
        ],
      },
    ];
  });
  return listOptions(options);
}
