// Controls over the drawing: in the order of measuring, exactly over their texts, never over each other's middle.
import { describe, expect, it } from 'vitest';
import { dimensionsOf, freeCorner, placesOf } from '../../client/drawing/places.js';
import type { DisplayList, Text } from '../../parts-library/drawing/index.js';

function text(field: string | undefined, x: number, y: number, degrees = 0): Text {
  const turn = (degrees * Math.PI) / 180;
  const corner = (dx: number, dy: number) => ({
    x: x + dx * Math.cos(turn) - dy * Math.sin(turn),
    y: y + dx * Math.sin(turn) + dy * Math.cos(turn),
  });
  return {
    kind: 'text',
    role: 'dimension',
    at: { x, y },
    anchor: 'middle',
    degrees,
    size: 16,
    face: 'condensed',
    text: field ?? 'read only',
    box: [corner(-30, -10), corner(30, -10), corner(30, 10), corner(-30, 10)],
    ...(field === undefined ? {} : { field, dimensionId: `dimension of ${field}` }),
  };
}

const list = (...items: readonly Text[]): DisplayList => ({
  width: 800,
  height: 600,
  scale: 4,
  items,
  tabOrder: ['boltCircle', 'hub', 'outside'],
});

describe('controls over the drawing', () => {
  it('stand in the order of measuring, whatever the paint order is', () => {
    const places = placesOf(
      list(text('outside', 700, 100), text('hub', 400, 300), text('boltCircle', 100, 100)),
    );
    expect(places.map(({ field }) => field)).toEqual(['boltCircle', 'hub', 'outside']);
  });

  it('lie over the middle of a turned text, with its size before turning', () => {
    const [place] = placesOf(list(text('boltCircle', 200, 150, -36)));
    expect(place?.x).toBeCloseTo(200, 9);
    expect(place?.y).toBeCloseTo(150, 9);
    expect(place?.width).toBeCloseTo(60, 9);
    expect(place?.height).toBeCloseTo(20, 9);
    expect(place?.degrees).toBe(-36);
  });

  it('take 44 pixels, and less only beside a close neighbour', () => {
    const [circle, hub, outside] = placesOf(
      list(text('boltCircle', 100, 100), text('hub', 110, 130), text('outside', 600, 500)),
    );
    expect(circle?.reach).toBe(30);
    expect(hub?.reach).toBe(30);
    expect(outside?.reach).toBe(44);
  });

  it('leave texts alone that edit nothing', () => {
    expect(placesOf(list(text(undefined, 100, 100)))).toEqual([]);
  });

  it('light up the dimension of the field in hand', () => {
    const drawn = list(text('hub', 100, 100), text('outside', 300, 100));
    expect([...dimensionsOf(drawn, 'hub')]).toEqual(['dimension of hub']);
    expect(dimensionsOf(drawn, undefined).size).toBe(0);
  });

  it('the card takes the corner that is empty, and never covers the entry in hand', () => {
    const drawn = list(text('hub', 60, 560), text('outside', 740, 560));
    expect(freeCorner(drawn, { width: 200, height: 120 }, 'hub')).toEqual({ across: 'left', down: 'top' });
  });
});
