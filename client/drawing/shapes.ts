// What each item of a display list becomes on the screen: keyed, flat shapes that can be compared cheaply.
import type { Balloon, DisplayItem, DisplayList, Stroke, Text } from '../../parts-library/drawing/index.js';
import { writePathData } from './path-data.js';

/** One SVG element to be: `key` says which it is from one drawing to the next. */
export interface Shape {
  readonly key: string;
  readonly tag: 'path' | 'text';
  readonly attributes: Readonly<Record<string, string>>;
  readonly content: string;
}

const size = (value: number): string => String(Math.round(value * 100) / 100);

function strokeShape(stroke: Stroke, lit: ReadonlySet<string>): Omit<Shape, 'key'> {
  const isLit = stroke.dimensionId !== undefined && lit.has(stroke.dimensionId);
  return {
    tag: 'path',
    content: '',
    attributes: {
      class: `role-${stroke.role} type-${stroke.type} weight-${stroke.weight} fill-${stroke.fill ?? 'none'}${isLit ? ' lit' : ''}`,
      d: writePathData(stroke.path),
    },
  };
}

function textShape(text: Text, lit: ReadonlySet<string>): Omit<Shape, 'key'> {
  const isLit = text.dimensionId !== undefined && lit.has(text.dimensionId);
  const place = `translate(${size(text.at.x)} ${size(text.at.y)})`;
  return {
    tag: 'text',
    content: text.text,
    attributes: {
      class: `role-${text.role} face-${text.face}${isLit ? ' lit' : ''}`,
      'text-anchor': text.anchor,
      'font-size': size(text.size),
      // Moved by its transform alone, a text keeps its laid out letters.
      transform: text.degrees === 0 ? place : `${place} rotate(${size(text.degrees)})`,
    },
  };
}

/** Corners of the figure that stands for a level, so that it reads without colour: octagon, diamond, circle. */
function balloonOutline(balloon: Balloon): string {
  const { at, radius: r } = balloon;
  const polygon = (corners: number, turn: number, reach: number): string => {
    const points = Array.from({ length: corners }, (_, index) => {
      const angle = turn + (index * 2 * Math.PI) / corners;
      return `${size(at.x + reach * Math.cos(angle))} ${size(at.y + reach * Math.sin(angle))}`;
    });
    return `M${points.join('L')}Z`;
  };
  if (balloon.level === 'stop') return polygon(8, Math.PI / 8, r * 1.06);
  if (balloon.level === 'caution') return polygon(4, 0, r * 1.28);
  return `M${size(at.x - r)} ${size(at.y)}A${size(r)} ${size(r)} 0 1 1 ${size(at.x + r)} ${size(at.y)}A${size(r)} ${size(r)} 0 1 1 ${size(at.x - r)} ${size(at.y)}Z`;
}

function balloonShapes(balloon: Balloon): readonly Omit<Shape, 'key'>[] {
  return [
    {
      tag: 'path',
      content: '',
      attributes: {
        class: `balloon level-${balloon.level}`,
        d: balloonOutline(balloon),
        'data-note': String(balloon.number),
      },
    },
    {
      tag: 'text',
      content: String(balloon.number),
      attributes: {
        class: `balloon-number level-${balloon.level}`,
        'text-anchor': 'middle',
        'font-size': size(balloon.radius * 1.05),
        transform: `translate(${size(balloon.at.x)} ${size(balloon.at.y + balloon.radius * 0.36)})`,
      },
    },
  ];
}

/** What an item belongs to; items that share it are told apart by their order. */
function nameOf(item: DisplayItem): string {
  if (item.kind === 'balloon') return `balloon ${item.code}`;
  if (item.kind === 'text') return `text ${item.role} ${item.dimensionId ?? ''}`;
  return `stroke ${item.role} ${item.featureId ?? item.dimensionId ?? item.ghostId ?? ''}`;
}

/**
 * A display list as keyed shapes in paint order. `lit` names the dimensions that have focus.
 * A key follows a feature, dimension or ghost through edits, so that a painter touches only what changed.
 */
export function shapesOf(list: DisplayList, lit: ReadonlySet<string>): readonly Shape[] {
  const counts = new Map<string, number>();
  return list.items.flatMap((item): readonly Shape[] => {
    const name = nameOf(item);
    const count = counts.get(name) ?? 0;
    counts.set(name, count + 1);
    const bare =
      item.kind === 'stroke'
        ? [strokeShape(item, lit)]
        : item.kind === 'text'
          ? [textShape(item, lit)]
          : balloonShapes(item);
    return bare.map((shape, part) => ({ ...shape, key: `${name} ${count}.${part}` }));
  });
}
