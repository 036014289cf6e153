// What stands on a print, in which line and where.
import { describe, expect, test } from 'vitest';
import {
  drawPrint,
  type Balloon,
  type DisplayItem,
  type DisplayList,
  type PathCommand,
  type PrintInput,
  type Stroke,
  type Text,
} from '../../parts-library/drawing/index.js';
import { bentBracket, crowdedAdapter, lobedAdapter, MIDDLE, ringPlate } from './orchard-parts.js';
import { onPaper, onWindow, PAPERS, WINDOWS } from './prints.js';

const [wide] = WINDOWS;
const [a4, a3] = PAPERS;

const strokesOf = (list: DisplayList, role: Stroke['role']): readonly Stroke[] =>
  list.items.filter((item): item is Stroke => item.kind === 'stroke' && item.role === role);
const textsOf = ({ items }: DisplayList): readonly Text[] =>
  items.filter((item): item is Text => item.kind === 'text');
const balloonsOf = ({ items }: DisplayList): readonly Balloon[] =>
  items.filter((item): item is Balloon => item.kind === 'balloon');
const arcsOf = (path: readonly PathCommand[]): readonly number[] =>
  path.flatMap((command) => (command[0] === 'A' ? [command[1]] : []));
const draw = (input: PrintInput): DisplayList => drawPrint(input);
const isEdge = (item: DisplayItem): boolean =>
  item.kind === 'stroke' && (item.role === 'outline' || item.role === 'opening');

describe('the part', () => {
  const ring = draw(onWindow(ringPlate(150, 6), wide));

  test('a ring of 150 is drawn with true arcs of radius 75 at scale, in a wide continuous line', () => {
    const [outline] = strokesOf(ring, 'outline');
    expect(outline).toMatchObject({ type: 'continuous', weight: 'wide', featureId: 'outline' });
    expect(arcsOf(outline?.path ?? [])).toHaveLength(2);
    for (const radius of arcsOf(outline?.path ?? [])) expect(radius).toBeCloseTo(75 * ring.scale, 2);
  });

  test('openings are holes in the metal', () => {
    const openings = strokesOf(ring, 'opening');
    expect(openings.map(({ featureId }) => featureId)).toContain('pattern1.hole.6');
    expect(openings).toHaveLength(7);
    const [metal] = strokesOf(ring, 'metal');
    expect(metal?.fill).toBe('metal');
    expect(metal?.path.filter(([command]) => command === 'M')).toHaveLength(8);
  });

  test('metal is painted first and edges before the words', () => {
    expect(ring.items[0]).toMatchObject({ role: 'metal' });
    expect(ring.items.findLastIndex(isEdge)).toBeLessThan(
      ring.items.findIndex(({ kind }) => kind === 'text'),
    );
  });

  test('every hole has a centre line, and the measured bolt circle is drawn', () => {
    const centres = strokesOf(ring, 'centre');
    for (const { type, weight } of centres) {
      expect(type).toBe('long-dashed-dotted');
      expect(weight).toBe('narrow');
    }
    // The bolt circle, the cross of the whole part and a mark for each of six holes.
    expect(centres).toHaveLength(8);
    const circle = centres.flatMap(({ path }) => arcsOf(path));
    expect(circle[0]).toBeCloseTo(57 * ring.scale, 2);
  });

  test('it uses the room: the ring fills at least 85 % of the window’s height', () => {
    expect((150 * ring.scale) / wide.height).toBeGreaterThan(0.85);
  });

  test('a slot has one line along its axis and one across at each end', () => {
    const bracket = draw(onWindow(bentBracket(), wide));
    // One hole's cross, and three lines for the slot.
    expect(strokesOf(bracket, 'centre')).toHaveLength(4);
  });
});

describe('marks, ghosts, welds, threads', () => {
  const print = draw(onWindow(lobedAdapter(), wide));

  test('a mark is a narrow cross with a filled dot', () => {
    const marks = strokesOf(print, 'mark').filter(({ featureId }) => featureId === 'pattern1.hole.1');
    expect(marks.map(({ weight }) => weight)).toEqual(['narrow', 'narrow']);
    expect(marks.map(({ fill }) => fill)).toEqual([undefined, 'ink']);
  });

  test('a mating part is a narrow long-dashed double-dotted line', () => {
    const sprocket = print.items.find((item) => item.kind === 'stroke' && item.ghostId === 'sprocket');
    expect(sprocket).toMatchObject({ role: 'ghost', type: 'long-dashed-double-dotted', weight: 'narrow' });
  });

  test('a thread is three quarters of a narrow circle of its nominal diameter', () => {
    const thread = print.items.find(
      (item): item is Stroke => item.kind === 'stroke' && item.ghostId === 'thread.3',
    );
    expect(thread?.type).toBe('continuous');
    expect(thread?.weight).toBe('narrow');
    const [start, arc] = thread?.path ?? [];
    expect(arc?.[0]).toBe('A');
    if (start?.[0] !== 'M' || arc?.[0] !== 'A') throw new Error('no arc');
    expect(arc[1]).toBeCloseTo(5 * print.scale, 2);
    expect(arc[2]).toBe(1);
    // The open quarter: chord of 90 degrees is radius times the square root of 2.
    expect(Math.hypot(start[1] - arc[4], start[2] - arc[5])).toBeCloseTo(5 * print.scale * Math.SQRT2, 2);
  });

  test('a weld is ticks round its hub', () => {
    const [weld] = strokesOf(print, 'weld');
    expect(weld?.ghostId).toBe('weld');
    expect(weld?.path.length).toBeGreaterThan(48);
  });
});

describe('dimensions', () => {
  const print = draw(onWindow(crowdedAdapter(150, 5), wide));

  test('each text is placed once, carries its field, and the diameter sign is one the face can write', () => {
    const bore = textsOf(print).find(({ dimensionId }) => dimensionId === 'bore');
    expect(bore).toMatchObject({ text: 'Ø45, slip to weld', field: 'hub', role: 'dimension' });
  });

  test('texts read from the bottom or from the right', () => {
    for (const { degrees } of textsOf(print)) {
      expect(degrees).toBeGreaterThanOrEqual(-90);
      expect(degrees).toBeLessThan(90);
    }
  });

  test('an upright dimension reads from the right', () => {
    const height = textsOf(print).find(({ dimensionId }) => dimensionId === 'height');
    expect(height?.degrees).toBe(-90);
  });

  test('dimension, extension and leader lines are narrow; arrowheads are filled', () => {
    for (const role of ['dimension', 'extension', 'leader'] as const) {
      for (const { weight, type } of strokesOf(print, role)) {
        expect([weight, type]).toEqual(['narrow', 'continuous']);
      }
    }
    const across = strokesOf(print, 'dimension').filter(({ dimensionId }) => dimensionId === 'across');
    const heads = across.find(({ fill }) => fill === 'ink');
    expect(heads?.path.filter(([command]) => command === 'Z')).toHaveLength(2);
  });

  test('the line of a 108.42 dimension is as long as it measures', () => {
    const line = strokesOf(print, 'dimension').find(
      ({ dimensionId, fill }) => dimensionId === 'across' && fill === undefined,
    );
    const [from, to] = line?.path ?? [];
    if (from?.[0] !== 'M' || to?.[0] !== 'L') throw new Error('no line');
    // Holes 72 degrees either side of the top on a circle of 114: 2 × 57 × sin 72° = 108.42.
    expect(Math.abs(to[1] - from[1]) / print.scale).toBeCloseTo(108.42, 1);
  });

  test('a diameter’s leader lies on a radius: its line runs through the centre', () => {
    const ring = draw(onWindow(ringPlate(150, 6), wide));
    const leader = strokesOf(ring, 'leader').find(
      ({ dimensionId, fill }) => dimensionId === 'outside' && fill === undefined,
    );
    const [tip, elbow] = leader?.path ?? [];
    if (tip?.[0] !== 'M' || elbow?.[0] !== 'L') throw new Error('no leader');
    const centre = { x: wide.width / 2, y: wide.height / 2 };
    const cross = (elbow[1] - tip[1]) * (centre.y - tip[2]) - (elbow[2] - tip[2]) * (centre.x - tip[1]);
    const length = Math.hypot(elbow[1] - tip[1], elbow[2] - tip[2]);
    expect(Math.abs(cross) / length).toBeLessThan(0.01);
    expect(Math.hypot(tip[1] - centre.x, tip[2] - centre.y)).toBeCloseTo(75 * ring.scale, 1);
  });

  test('Tab follows the order in which a person measures', () => {
    expect(print.tabOrder).toEqual([
      'boltCircle',
      'bolt',
      'hub',
      'edge',
      'scallop',
      'clocking',
      'thickness',
      'across',
      'height',
      'fromBore',
      'hubOutside',
    ]);
  });

  test('the dimension with focus is drawn wide and last, and nothing moves', () => {
    const input = onWindow(crowdedAdapter(150, 5), wide);
    const focused = draw({ ...input, focus: 'across' });
    const last = focused.items.slice(-4);
    for (const item of last) expect(item).toMatchObject({ dimensionId: 'across' });
    expect(last.flatMap((item) => (item.kind === 'stroke' ? [item.weight] : []))).toEqual([
      'wide',
      'wide',
      'wide',
    ]);
    const places = (list: DisplayList): readonly string[] =>
      textsOf(list)
        .map(({ text, at }) => `${text} ${at.x} ${at.y}`)
        .toSorted();
    expect(places(focused)).toEqual(places(print));
  });
});

describe('balloons', () => {
  test('count the findings that are no passes, and say their code and level', () => {
    const print = draw(onWindow(crowdedAdapter(150, 5), wide));
    const balloons = balloonsOf(print);
    expect(balloons.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(balloons[0]).toMatchObject({ code: 'edge-distance', level: 'stop' });
  });

  test('a finding that points nowhere keeps its number and has no balloon', () => {
    const example = lobedAdapter();
    const [first, ...rest] = example.findings;
    if (first === undefined) throw new Error('no finding');
    const { anchor: _anchor, ...unplaced } = first;
    const print = draw(onWindow({ ...example, findings: [unplaced, ...rest] }, wide));
    expect(balloonsOf(print).map(({ number }) => number)).toEqual([2, 3]);
  });
});

describe('the scale bar', () => {
  test('is as long as it says', () => {
    const print = draw(onWindow(ringPlate(150, 6), wide));
    const [bar] = strokesOf(print, 'scale-bar');
    const [, left, right] = bar?.path ?? [];
    if (left?.[0] !== 'L' || right?.[0] !== 'L') throw new Error('no bar');
    const text = textsOf(print).find(({ role }) => role === 'scale-bar')?.text ?? '';
    expect(text).toMatch(/^\d+ mm$/);
    expect((right[1] - left[1]) / print.scale).toBeCloseTo(Number.parseFloat(text), 1);
  });

  test('is in inches for a job in inches: 1 in is 25.4 mm', () => {
    const print = draw({ ...onWindow(ringPlate(150, 6), wide), unit: 'in' });
    const [bar] = strokesOf(print, 'scale-bar');
    const [, left, right] = bar?.path ?? [];
    if (left?.[0] !== 'L' || right?.[0] !== 'L') throw new Error('no bar');
    expect(textsOf(print).find(({ role }) => role === 'scale-bar')?.text).toBe('1 in');
    expect((right[1] - left[1]) / print.scale).toBeCloseTo(25.4, 1);
  });
});

describe('sheets', () => {
  const sheet = draw(onPaper(crowdedAdapter(150, 5), a4));

  test('are drawn to a preferred scale, and say which', () => {
    expect(sheet.scale).toBe(0.5);
    expect(textsOf(sheet).filter(({ role, text }) => role === 'title' && text === '1:2')).toHaveLength(1);
  });

  test('keep 20 mm on the left for filing and 10 mm elsewhere (ISO 5457)', () => {
    const [border] = strokesOf(sheet, 'frame');
    expect(border).toMatchObject({ weight: 'wide' });
    expect(border?.path).toEqual([['M', 20, 10], ['L', 287, 10], ['L', 287, 200], ['L', 20, 200], ['Z']]);
  });

  test('a scale that is asked for is used when it fits, and the real one is stated', () => {
    const input = onPaper(ringPlate(60, 6), a4);
    const title = input.title;
    if (title === undefined) throw new Error('no title');
    const asked = draw({ ...input, title: { ...title, scale: '1:1' } });
    expect(asked.scale).toBe(1);
    expect(draw({ ...input, title: { ...title, scale: '50:1' } }).scale).toBe(draw(input).scale);
  });

  test('carry the title block and its caution', () => {
    const words = textsOf(sheet)
      .filter(({ role }) => role === 'title')
      .map(({ text }) => text);
    for (const value of [
      'Adapter plate, rear',
      'Haul cart',
      'S275',
      '6 mm',
      '624 mm',
      '0:41 ±8 s',
      '2025-03-14',
    ]) {
      expect(words).toContain(value);
    }
    expect(words.at(-1)).toMatch(/finished sizes; kerf is not in them/);
  });

  test('number the notes like the balloons', () => {
    const numbers = balloonsOf(sheet).map(({ number }) => number);
    for (const number of [1, 2, 3, 4, 5, 6, 7, 8]) {
      expect(numbers.filter((one) => one === number)).toHaveLength(2);
    }
  });

  const noteWords = (list: DisplayList): string =>
    textsOf(list)
      .filter(({ role }) => role === 'note')
      .map(({ text }) => text)
      .join(' ');
  const longer = (times: number): DisplayList => {
    const input = onPaper(crowdedAdapter(150, 5), a4);
    const notes = input.notes?.map((note) => ({
      ...note,
      title: `${note.title} `.repeat(times).trim(),
      says: `${note.says} `.repeat(4),
    }));
    return draw({ ...input, notes: notes ?? [] });
  };

  test('long notes keep their titles; it is said whose words are missing and where they are', () => {
    const words = noteWords(longer(1));
    expect(words).toMatch(/Words and sources of \d to 8: with this print on the bench\./);
    expect(words).toMatch(/Bearing 41 MPa, 12 % used/);
  });

  test('titles that do not fit are counted, with their numbers and their place', () => {
    const words = noteWords(longer(12));
    expect(words).toMatch(/\d more, \d to 8, and all words: with this print on the bench\./);
    expect(words).not.toMatch(/Bearing 41 MPa/);
  });

  test('a larger sheet is lettered larger: 3.5 mm capitals on A3, 2.5 mm on A4 (ISO 3098)', () => {
    const capitals = (list: DisplayList): number =>
      (textsOf(list).find(({ role }) => role === 'dimension')?.size ?? 0) * 0.7;
    expect(capitals(sheet)).toBeCloseTo(2.5, 2);
    expect(capitals(draw(onPaper(lobedAdapter(), a3)))).toBeCloseTo(3.5, 2);
  });
});

describe('steadiness', () => {
  test('the same input gives the same list', () => {
    const input = onWindow(crowdedAdapter(150, 5), wide);
    expect(JSON.stringify(draw(input))).toBe(JSON.stringify(draw(input)));
  });

  test('coordinates are rounded to thousandths', () => {
    const numbers = JSON.stringify(draw(onWindow(crowdedAdapter(150, 5), wide)).items).match(/-?\d+\.\d+/g);
    expect(numbers?.filter((number) => (number.split('.')[1] ?? '').length > 3)).toEqual([]);
  });

  test('a part without dimensions, ghosts or findings is a print too', () => {
    const bare = draw(onWindow({ ...ringPlate(150, 6), dimensions: [] }, wide));
    expect(textsOf(bare).map(({ role }) => role)).toEqual(['scale-bar']);
    expect(bare.tabOrder).toEqual([]);
  });

  test('a ghost’s name is left out rather than forced where there is no room', () => {
    const ghosts = Array.from({ length: 60 }, (_, i) => ({
      id: `ghost ${i}`,
      kind: 'mating-part' as const,
      label: `mating part number ${i}`,
      shape: { circle: { centre: MIDDLE, radius: 80 } },
    }));
    const print = draw(onWindow({ ...ringPlate(150, 6), ghosts }, { width: 390, height: 420 }));
    const named = textsOf(print).filter(({ role }) => role === 'ghost');
    expect(named.length).toBeLessThan(60);
    expect(textsOf(print).filter(({ role }) => role === 'dimension')).toHaveLength(6);
  });
});
