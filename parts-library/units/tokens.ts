// Cuts what was typed into numbers, fractions, units and signs, each with its place in the text.

/** A unit as people spell it. In a spelling `·` stands for any joiner or none, and `/` may have blanks around it. */
export interface UnitRecord {
  readonly name: string;
  /** How many of the room's own unit (mm, N, N·m, kg, mm/min, s, degrees) it holds. */
  readonly factor: number;
  readonly spelled: readonly string[];
  /** The unit that may follow without a sign, as inches follow feet: below how many, and whether `1'-2"` joins too. */
  readonly followedBy?: { readonly unit: UnitRecord; readonly below: number; readonly joined?: boolean };
  /** Whether it serves a bare number on the other side of a ±: either side, only the nominal, or neither. */
  readonly lends?: 'either' | 'nominal';
}

interface Place {
  readonly start: number;
  readonly end: number;
}

export type Sign = '+' | '-' | '*' | '/' | '(' | ')' | '±';

export type Token =
  | (Place & { readonly kind: 'number'; readonly value: number; readonly whole: boolean })
  | (Place & { readonly kind: 'vulgar'; readonly value: number })
  | (Place & { readonly kind: 'unit'; readonly unit: UnitRecord })
  | (Place & { readonly kind: 'sign'; readonly sign: Sign; readonly hyphen: boolean })
  | (Place & { readonly kind: 'fault'; readonly why: string })
  | (Place & { readonly kind: 'end' });

/** Units made ready to be recognised. */
export type Spellings = ReadonlyArray<{ readonly unit: UnitRecord; readonly pattern: RegExp }>;

const VULGAR: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅐': 1 / 7,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
  '⅑': 1 / 9,
  '⅒': 1 / 10,
};

// A typed hyphen can join (1-3/8); a typeset minus or dash only subtracts.
const HYPHENS = '-\u2010\u2011';
const SIGNS: Readonly<Record<string, Sign>> = {
  '+': '+',
  '-': '-',
  '\u2010': '-',
  '\u2011': '-',
  '−': '-',
  '–': '-',
  '*': '*',
  '×': '*',
  '/': '/',
  '⁄': '/',
  '÷': '/',
  '(': '(',
  ')': ')',
};

const PLUS_MINUS = /±|\+ ?\/ ?[-−–]|\+[-−–]/uy;
const DIGITS = /(?:\d|[.,]\d)[\d.,]*/uy;
const WORD = /\p{L}+/uy;
const BLANKS = /\s*/uy;

/** Makes a unit table ready for `readTokens`: any case, any of its spellings. */
export function compileSpellings(units: readonly UnitRecord[]): Spellings {
  return units.flatMap((unit) =>
    unit.spelled.map((spelling) => {
      const source = spelling
        .replaceAll(/[.*+?^${}()|[\]\\]/gu, String.raw`\$&`)
        .replaceAll('·', String.raw`\s*[-·⋅∙•*.×]?\s*`)
        .replaceAll('/', String.raw`\s*/\s*`);
      // A word must end where the unit ends: `in` is not read out of `inx`.
      const tail = /\p{L}$/u.test(spelling) ? String.raw`(?!\p{L})` : '';
      return { unit, pattern: new RegExp(source + tail, 'iuy') };
    }),
  );
}

/**
 * Cuts a stretch of text into tokens, ending with an `end` token.
 * A `fault` token marks the first thing that has no meaning anywhere, and nothing is read past it.
 * @param text the whole text as typed
 * @param start where to begin
 * @param end where to stop
 * @param spellings the units to recognise
 * @param what the quantity's name for the fault's reason, such as `length`
 */
export function readTokens(
  text: string,
  start: number,
  end: number,
  spellings: Spellings,
  what: string,
): readonly Token[] {
  const shown = text.slice(0, end);
  const tokens: Token[] = [];
  let at = start;
  for (;;) {
    at += matchAt(BLANKS, shown, at).length;
    if (at >= end) break;
    const token = nextToken(shown, at, spellings, what);
    tokens.push(token);
    if (token.kind === 'fault') break;
    at = token.end;
  }
  tokens.push({ kind: 'end', start: at, end: at });
  return tokens;
}

function nextToken(text: string, start: number, spellings: Spellings, what: string): Token {
  const unit = longestUnit(text, start, spellings);
  if (unit !== undefined) return unit;
  const plusMinus = matchAt(PLUS_MINUS, text, start);
  if (plusMinus !== '') return sign('±', start, start + plusMinus.length, false);
  const digits = matchAt(DIGITS, text, start);
  if (digits !== '') return numberToken(digits, start);
  const character = text.charAt(start);
  const vulgar = VULGAR[character];
  if (vulgar !== undefined) return { kind: 'vulgar', value: vulgar, start, end: start + 1 };
  const known = SIGNS[character];
  if (known !== undefined) return sign(known, start, start + 1, HYPHENS.includes(character));
  const word = matchAt(WORD, text, start);
  if (word === 'x' || word === 'X') return sign('*', start, start + 1, false);
  const why = word === '' ? `not part of a ${what}` : `not a unit of ${what}`;
  return { kind: 'fault', why, start, end: start + 1 };
}

function longestUnit(text: string, start: number, spellings: Spellings): Token | undefined {
  let best: Token | undefined;
  for (const { unit, pattern } of spellings) {
    const end = start + matchAt(pattern, text, start).length;
    if (end > (best?.end ?? start)) best = { kind: 'unit', unit, start, end };
  }
  return best;
}

function sign(of: Sign, start: number, end: number, hyphen: boolean): Token {
  return { kind: 'sign', sign: of, start, end, hyphen };
}

// A comma is a decimal comma unless it could set off thousands: 57,1 and 0,125 are plain, 1,234 is not.
function numberToken(run: string, start: number): Token {
  const digits = run.endsWith(',') ? run.slice(0, -1) : run;
  const end = start + digits.length;
  const refuse = (why: string): Token => ({ kind: 'fault', why, start, end });
  const commas = digits.split(',').length - 1;
  const points = digits.split('.').length - 1;
  if (commas > 0 && points > 0)
    return refuse(
      'both a point and a comma in one number, so write it without the thousands mark, as 1234.5',
    );
  if (points > 1) return refuse('more than one decimal point in one number');
  if (commas > 1) return refuse('more than one comma in one number, so write it without them, as 1234567');
  if (/^[1-9]\d{0,2},\d{3}$/u.test(digits)) {
    const joined = digits.replace(',', '');
    const decimal = digits.replace(',', '.');
    return refuse(
      `the comma could be a decimal or a thousands mark, so write ${decimal} for the one or ${joined} for the other`,
    );
  }
  const value = Number(digits.replace(',', '.'));
  if (!Number.isFinite(value)) return refuse('a number too large to use');
  return { kind: 'number', value, whole: commas === 0 && points === 0, start, end };
}

function matchAt(pattern: RegExp, text: string, at: number): string {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] ?? '';
}
