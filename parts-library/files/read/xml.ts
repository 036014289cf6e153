// An XML text as a tree of elements: nothing is fetched, nothing expanded, and what is too deep or too long is refused.
import { SaxesParser } from 'saxes';
import { READ_LIMITS } from './limits.js';
import { DrawingProblem } from './problem.js';

export interface XmlElement {
  /** Without its prefix. */
  readonly name: string;
  /** By name without prefix; one without a prefix wins. */
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly XmlElement[];
}

const localName = (name: string): string => name.slice(name.indexOf(':') + 1);

function attributesOf(given: Readonly<Record<string, string>>): ReadonlyMap<string, string> {
  const entries = Object.entries(given).filter(([name]) => name !== 'xmlns' && !name.startsWith('xmlns:'));
  const prefixed = entries.filter(([name]) => name.includes(':'));
  return new Map([
    ...prefixed.map(([name, value]) => [localName(name), value] as const),
    ...entries.filter(([name]) => !name.includes(':')),
  ]);
}

/** @throws DrawingProblem with line and column for what is no sound XML */
export function readXml(text: string): XmlElement {
  const parser = new SaxesParser();
  const open: { readonly element: XmlElement; readonly children: XmlElement[] }[] = [];
  let root: XmlElement | undefined;
  let elements = 0;
  parser.on('error', (error) => {
    throw new DrawingProblem(`This is no sound SVG: ${error.message.slice(0, 200)}`);
  });
  parser.on('doctype', (doctype) => {
    if (/<!ENTITY/i.test(doctype))
      throw new DrawingProblem(
        'The file declares entities of its own, which are not expanded. Save it as plain SVG.',
      );
  });
  parser.on('opentag', ({ name, attributes }) => {
    elements += 1;
    if (elements > READ_LIMITS.elements)
      throw new DrawingProblem(
        `The file has more than ${READ_LIMITS.elements} elements; leave out what is not cut.`,
      );
    if (open.length >= READ_LIMITS.depth)
      throw new DrawingProblem(`Groups lie more than ${READ_LIMITS.depth} deep in each other; ungroup some.`);
    const children: XmlElement[] = [];
    const element = { name: localName(name), attributes: attributesOf(attributes), children };
    open.at(-1)?.children.push(element);
    root ??= element;
    open.push({ element, children });
  });
  parser.on('closetag', () => {
    open.pop();
  });
  parser.write(text).close();
  if (root === undefined) throw new DrawingProblem('The file holds no SVG element.');
  return root;
}
