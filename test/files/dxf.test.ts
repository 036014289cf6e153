// DXF text, group by group: what the reference asks and what we promise.
import { expect, test } from 'vitest';
import { writeCutDxf, writeCutSvg, writeFinishedDxf } from '../../parts-library/files/index.js';
import { bracket, bracketPlan, everyDxf, info, versions } from './pieces.js';

type Group = readonly [code: number, value: string];

/** A plain second reading of the text: pairs of lines. */
function groupsOf(text: string): readonly Group[] {
  const lines = text.split('\r\n');
  expect(lines.pop()).toBe('');
  expect(lines.length % 2).toBe(0);
  return Array.from({ length: lines.length / 2 }, (_, i): Group => [
    Number(lines[2 * i]),
    lines[2 * i + 1] ?? '',
  ]);
}

const sections = (groups: readonly Group[]): readonly string[] =>
  groups.flatMap(([code, value], i) => (code === 0 && value === 'SECTION' ? [groups[i + 1]?.[1] ?? ''] : []));

const valuesOf = (groups: readonly Group[], code: number): readonly string[] =>
  groups.filter((group) => group[0] === code).map((group) => group[1]);

/** Group codes that hold lengths or ratios. */
const isReal = (code: number): boolean => code >= 10 && code < 60;

test.each(everyDxf)('$label: CRLF and plain ASCII throughout, ends with EOF', ({ file }) => {
  expect(file.text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  expect(file.text).toMatch(/^[\x20-\x7e\r\n]*$/);
  expect(file.text.endsWith('0\r\nEOF\r\n')).toBe(true);
  const groups = groupsOf(file.text);
  expect(groups.every(([code]) => Number.isInteger(code))).toBe(true);
});

test.each(everyDxf)(
  '$label: every real number has at most 9 decimals, no exponent, no minus nought',
  ({ file }) => {
    const reals = groupsOf(file.text).filter(([code]) => isReal(code));
    expect(reals.length).toBeGreaterThan(50);
    for (const [, value] of reals) {
      expect(value).toMatch(/^-?\d+(\.\d{1,9})?$/);
      expect(value).not.toBe('-0');
    }
  },
);

test.each(everyDxf)('$label: the sections of its version, in order', ({ file, version }) => {
  expect(sections(groupsOf(file.text))).toEqual(
    version === 'R12'
      ? ['HEADER', 'TABLES', 'BLOCKS', 'ENTITIES']
      : ['HEADER', 'CLASSES', 'TABLES', 'BLOCKS', 'ENTITIES', 'OBJECTS'],
  );
});

test.each(everyDxf)('$label: the heading says the kind before anything else', ({ file }) => {
  const groups = groupsOf(file.text);
  const heading = groups
    .slice(
      0,
      groups.findIndex(([code]) => code !== 999),
    )
    .map(([, value]) => value);
  expect(heading[0]).toEqual(
    file.kind === 'finished'
      ? 'FINISHED SIZE, no kerf: for a program that adds kerf itself.'
      : expect.stringMatching(/^CUT PATH, kerf .*1\.6 mm\)? already in: do not add kerf again\.$/),
  );
  const words = heading.join(' ');
  for (const word of ['battery tray foot', 'S275', '6 mm', 'dry run']) expect(words).toContain(word);
  expect(words).toContain(file.kind === 'finished' ? 'Quantity: 4' : 'Wanted: 4. Cut by this file: 1');
});

test.each(everyDxf)('$label: one kind never names a layer of the other', ({ file }) => {
  const other = file.kind === 'finished' ? /cutpath-/ : /finished-/;
  expect(file.text).not.toMatch(other);
});

test.each(everyDxf.filter(({ version }) => version === 'R2000'))(
  '$label: handles differ, owners exist, $HANDSEED is above them all',
  ({ file }) => {
    const groups = groupsOf(file.text);
    const seedAt = groups.findIndex(([code, value]) => code === 9 && value === '$HANDSEED');
    const seed = Number.parseInt(groups[seedAt + 1]?.[1] ?? '', 16);
    const rest = groups.slice(seedAt + 2);
    const handles = [...valuesOf(rest, 5), ...valuesOf(rest, 105)];
    expect(new Set(handles).size).toBe(handles.length);
    expect(Math.max(...handles.map((handle) => Number.parseInt(handle, 16)))).toBeLessThan(seed);
    for (const owner of valuesOf(rest, 330)) expect(['0', ...handles]).toContain(owner);
  },
);

test.each(versions)('%s: the same input gives the same bytes', (version) => {
  const again = [
    writeFinishedDxf(bracket, { baseName: 'tray-foot', version }),
    writeCutDxf(bracketPlan, info, { baseName: 'tray-foot', version }),
  ].map(({ text }) => text);
  const before = everyDxf.filter((each) => each.version === version && each.unit === 'mm');
  expect(again).toEqual(before.map(({ file }) => file.text));
});

test('R12 in millimetres is what is written when nothing is said', () => {
  const [first] = everyDxf;
  expect(writeFinishedDxf(bracket, { baseName: 'tray-foot' }).text).toBe(first?.file.text);
});

test('a name that is not ASCII is escaped, and one with line ends cannot forge a group', () => {
  const text = writeFinishedDxf({ ...bracket, name: 'Tür\r\n0\r\nEOF\r\n 木 ⌀150' }, { baseName: 'x' }).text;
  expect(text).toContain('T\\U+00FCr 0 EOF \\U+6728 dia 150');
  expect(groupsOf(text).filter(([code, value]) => code === 0 && value === 'EOF')).toHaveLength(1);
});

test('warnings stand before everything else', () => {
  const warnings = ['STOP: web 2 mm, 9 mm wanted'];
  expect(writeFinishedDxf(bracket, { baseName: 'x', warnings }).text.split('\r\n').slice(0, 3)).toEqual([
    '999',
    'STOP: web 2 mm, 9 mm wanted',
    '999',
  ]);
  expect(writeCutDxf(bracketPlan, info, { baseName: 'x', warnings, version: 'R2000' }).text).toMatch(
    /^999\r\nSTOP/,
  );
  expect(writeCutSvg(bracketPlan, info, { baseName: 'x', warnings }).text).toContain('<desc>STOP: web 2 mm');
});

test('contours, lines and marks are counted apart', () => {
  for (const { file } of everyDxf) {
    expect([file.contours, file.lines, file.marks]).toEqual([4, 2, 1]);
  }
});

test('a part with nothing but its outline, and a plan with nothing at all, are files too', () => {
  const bare = { ...bracket, features: bracket.features.filter(({ purpose }) => purpose === 'outline') };
  expect(writeFinishedDxf(bare, { baseName: 'bare', version: 'R2000' }).contours).toBe(1);
  const nothing = writeCutDxf({ ...bracketPlan, contours: [], lines: [], marks: [] }, info, {
    baseName: 'bare',
  });
  expect(nothing.contours).toBe(0);
  expect(nothing.text).toContain('$EXTMIN');
});
