// Paints a display list with svg.js and keeps its elements: an edit touches only the attributes that changed.
import { SVG, type G, type Path, type Svg, type Text } from '@svgdotjs/svg.js';
import type { DisplayList } from '../../parts-library/drawing/index.js';
import { shapesOf, type Shape } from './shapes.js';

/** What a repaint did, for tests and the edit benchmark. */
export interface PaintCount {
  readonly created: number;
  readonly changed: number;
  readonly kept: number;
  readonly removed: number;
}

export interface Painter {
  /** Paints the list; `lit` names the dimensions whose lines are shown emphasised. */
  readonly paint: (list: DisplayList, lit: ReadonlySet<string>) => PaintCount;
  readonly remove: () => void;
}

interface Painted {
  readonly element: Path | Text;
  shape: Shape;
}

function createElement(layer: G, shape: Shape): Path | Text {
  return shape.tag === 'path' ? layer.path() : layer.plain('');
}

/** Sets what differs between two shapes of one key; true when anything did. */
function applyShape(element: Path | Text, before: Shape | undefined, after: Shape): boolean {
  let changed = false;
  for (const [name, value] of Object.entries(after.attributes)) {
    if (before?.attributes[name] === value) continue;
    element.node.setAttribute(name, value);
    changed = true;
  }
  if (after.tag === 'text' && before?.content !== after.content) {
    element.node.textContent = after.content;
    changed = true;
  }
  return changed;
}

/** A painter in `host`. It keeps one element per shape key from one paint to the next. */
export function createPainter(host: HTMLElement): Painter {
  const svg: Svg = SVG().addTo(host);
  svg.attr({ 'aria-hidden': 'true', focusable: 'false' });
  const layer = svg.group();
  const painted = new Map<string, Painted>();
  let box = '';

  return {
    paint: (list, lit) => {
      const count = { created: 0, changed: 0, kept: 0, removed: 0 };
      const nextBox = `0 0 ${list.width} ${list.height}`;
      if (nextBox !== box) {
        svg.attr({ viewBox: nextBox, width: list.width, height: list.height });
        box = nextBox;
      }
      const shapes = shapesOf(list, lit);
      const wanted = new Set(shapes.map((shape) => shape.key));
      for (const [key, { element }] of painted) {
        if (wanted.has(key)) continue;
        element.remove();
        painted.delete(key);
        count.removed += 1;
      }
      // Walking backwards, each element only moves when it does not already stand before its follower.
      let follower: Node | null = null;
      for (const shape of shapes.toReversed()) {
        let entry = painted.get(shape.key);
        if (entry === undefined) {
          entry = { element: createElement(layer, shape), shape };
          applyShape(entry.element, undefined, shape);
          painted.set(shape.key, entry);
          count.created += 1;
        } else if (applyShape(entry.element, entry.shape, shape)) {
          entry.shape = shape;
          count.changed += 1;
        } else count.kept += 1;
        const { node } = entry.element;
        if (node.nextSibling !== follower || node.parentNode !== layer.node)
          layer.node.insertBefore(node, follower);
        follower = node;
      }
      return count;
    },
    remove: () => {
      svg.remove();
      painted.clear();
    },
  };
}
