// Values of SVG attributes: lengths with their units, lists of numbers, transforms, what a style says.
import { after, IDENTITY, shift, stretch, turned, type Affine } from './affine.js';
import { READ_LIMITS } from './limits.js';
import { DrawingProblem } from './problem.js';

const NUMBER = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?`;
const LENGTH = new RegExp(`^\\s*(${NUMBER})\\s*([A-Za-z%]*)\\s*$`);

/** Lengths of CSS Values and Units, mm. A pixel is a 96th of an inch. */
export const UNITS: ReadonlyMap<string, number> = new Map([
  ['mm', 1],
  ['cm', 10],
  ['Q', 0.25],
  ['in', 25.4],
  ['pt', 25.4 / 72],
  ['pc', 25.4 / 6],
  ['px', 25.4 / 96],
]);

/** A finite number within bounds, or a problem that names where it stands. */
export function boundedNumber(text: string, where: string): number {
  const value = new RegExp(`^\\s*${NUMBER}\\s*$`).test(text) ? Number(text) : Number.NaN;
  if (!Number.isFinite(value))
    throw new DrawingProblem(`${where} is "${text.slice(0, 40)}", which is not a number.`);
  if (Math.abs(value) > READ_LIMITS.coordinate)
    throw new DrawingProblem(
      `${where} is ${text.slice(0, 40)}; numbers beyond ${READ_LIMITS.coordinate} are a slip.`,
    );
  return value;
}

/** A length as it stands: its number and its unit, which may be empty; undefined for what is none. */
export function lengthOf(
  text: string | undefined,
): { readonly amount: number; readonly unit: string } | undefined {
  const found = LENGTH.exec(text ?? '');
  if (found === null) return undefined;
  return { amount: Number(found[1]), unit: found[2] ?? '' };
}

/** A length in user units; `otherwise` where it is not given. Shares of the page and of the type size are refused. */
export function userLength(text: string | undefined, where: string, otherwise = 0): number {
  if (text === undefined || text.trim() === '' || text.trim() === 'auto') return otherwise;
  const length = lengthOf(text);
  const millimetres = length === undefined ? undefined : UNITS.get(length.unit);
  if (length === undefined || (length.unit !== '' && millimetres === undefined))
    throw new DrawingProblem(
      `${where} is "${text.slice(0, 40)}"; accepted are a number, or one with mm, cm, in, pt, pc or px.`,
    );
  const px = UNITS.get('px') ?? 1;
  const scale = millimetres === undefined ? 1 : millimetres / px;
  return boundedNumber(String(length.amount), where) * scale;
}

/** A list of numbers parted by blanks and commas. */
export function numbersIn(text: string, where: string): readonly number[] {
  const words = text.match(new RegExp(NUMBER, 'g')) ?? [];
  const rest = text.replace(new RegExp(NUMBER, 'g'), '').trim();
  if (!/^[\s,]*$/.test(rest))
    throw new DrawingProblem(`${where} holds "${rest.slice(0, 40)}"; accepted are numbers.`);
  return words.map((word) => boundedNumber(word, where));
}

const skew = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

function oneTransform(name: string, values: readonly number[]): Affine | undefined {
  const [a = 0, b, c] = values;
  const count = values.length;
  if (name === 'matrix' && count === 6) {
    const [m = 1, n = 0, o = 0, p = 1, q = 0, r = 0] = values;
    return { a: m, b: n, c: o, d: p, e: q, f: r };
  }
  if (name === 'translate' && (count === 1 || count === 2)) return shift(a, b ?? 0);
  if (name === 'scale' && (count === 1 || count === 2)) return stretch(a, b ?? a);
  if (name === 'rotate' && count === 1) return turned(a);
  if (name === 'rotate' && count === 3) {
    const [x, y] = [b ?? 0, c ?? 0];
    return after(shift(x, y), after(turned(a), shift(-x, -y)));
  }
  if (name === 'skewX' && count === 1) return { ...IDENTITY, c: skew(a) };
  if (name === 'skewY' && count === 1) return { ...IDENTITY, b: skew(a) };
  return undefined;
}

/** A transform list (SVG 2, CSS Transforms), first written applied last. */
export function transformIn(text: string | undefined): Affine {
  if (text === undefined || text.trim() === '' || text.trim() === 'none') return IDENTITY;
  let rest = text;
  let move = IDENTITY;
  while (rest.trim() !== '') {
    const found = /^[\s,]*([A-Za-z]+)\s*\(([^()]*)\)/.exec(rest);
    const one =
      found === null ? undefined : oneTransform(found[1] ?? '', numbersIn(found[2] ?? '', 'A transform'));
    if (found === null || one === undefined)
      throw new DrawingProblem(
        `A transform is "${text.trim().slice(0, 60)}"; accepted are matrix, translate, scale, rotate, skewX and skewY.`,
      );
    move = after(move, one);
    rest = rest.slice(found[0].length);
  }
  return move;
}

/** The properties of a style attribute. */
export function styleOf(text: string | undefined): ReadonlyMap<string, string> {
  return new Map(
    (text ?? '').split(';').flatMap((one) => {
      const at = one.indexOf(':');
      return at < 0 ? [] : [[one.slice(0, at).trim(), one.slice(at + 1).trim()] as const];
    }),
  );
}
