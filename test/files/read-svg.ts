// A small reader of SVG for the tests, written apart from the writer: elements, attributes, path commands to corners.

export interface Element {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly text: string;
}

const UNESCAPED: Readonly<Record<string, string>> = {
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&amp;': '&',
};
const unescape = (text: string): string => text.replace(/&\w+;/g, (entity) => UNESCAPED[entity] ?? entity);

/** Every element in document order. @throws when tags do not match or anything is left over. */
export function elementsOf(xml: string): readonly Element[] {
  const elements: { name: string; attributes: Map<string, string>; text: string }[] = [];
  const open: number[] = [];
  const token = /<\?[^>]*\?>|<\/([\w]+)>|<([\w]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/gy;
  let end = 0;
  for (let match = token.exec(xml); match !== null; match = token.exec(xml)) {
    end = token.lastIndex;
    const [, closing, name, attributes = '', selfClosing, text] = match;
    const top = elements[open.at(-1) ?? -1];
    if (closing !== undefined) {
      if (top?.name !== closing) throw new Error(`</${closing}> does not close <${top?.name ?? ''}>`);
      open.pop();
    } else if (name !== undefined) {
      const pairs = [...attributes.matchAll(/([\w:-]+)="([^"]*)"/g)];
      const map = new Map(pairs.map(([, key = '', value = '']) => [key, unescape(value)]));
      if (map.size !== pairs.length) throw new Error(`<${name}> has an attribute twice`);
      elements.push({ name, attributes: map, text: '' });
      if (selfClosing === '') open.push(elements.length - 1);
    } else if (text !== undefined && top !== undefined) top.text += unescape(text);
  }
  if (end !== xml.length || open.length > 0) throw new Error(`not well formed near character ${end}`);
  return elements;
}

export interface Corner {
  readonly x: number;
  readonly y: number;
  readonly bulge: number;
}

export interface Path {
  /** With y up again, as on the plate. */
  readonly corners: readonly Corner[];
  readonly closed: boolean;
}

/** Reads absolute M, L, A and Z and the relative h, which is all that is expected. Arcs by the formulas of SVG 1.1, F.6.5. */
export function readPath(d: string): Path {
  const corners: Corner[] = [];
  let closed = false;
  for (const [, command = '', rest = ''] of d.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const n = rest
      .trim()
      .split(/[\s,]+/)
      .filter((word) => word !== '')
      .map(Number);
    const last = corners.at(-1);
    const [a = NaN, b = NaN, , large, sweep, x = NaN, y = NaN] = n;
    if (command === 'M' || command === 'L') corners.push({ x: a, y: -b, bulge: 0 });
    else if (command === 'h' && last !== undefined) corners.push({ x: last.x + a, y: last.y, bulge: 0 });
    else if (command === 'Z') closed = true;
    else if (command === 'A' && last !== undefined) {
      const chord = Math.hypot(x - last.x, -y - last.y);
      // A radius too small for its chord is grown to half the chord (F.6.6).
      const radius = Math.max(a, chord / 2);
      const half = Math.asin(Math.min(1, chord / (2 * radius)));
      const angle = 2 * (large === 1 ? Math.PI - half : half);
      corners[corners.length - 1] = { ...last, bulge: Math.tan(angle / 4) * (sweep === 0 ? 1 : -1) };
      corners.push({ x, y: -y, bulge: 0 });
    } else throw new Error(`${command} is not expected here`);
  }
  return { corners, closed };
}
