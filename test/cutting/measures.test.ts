// Area, edge length and mass of a part, against figures worked by hand.
import { expect, test } from 'vitest';
import { massOf, netArea, perimeterOf } from '../../parts-library/cutting/index.js';
import { adapter, ring } from './shop.js';

test('a ring of 150 with a bore of 57.35 has pi/4 (150² - 57.35²) = 15 088.28 mm² of metal', () => {
  // 22500 - 3289.0225 = 19210.9775; times 0.785398163 = 15088.2664
  expect(netArea(ring)).toBeCloseTo(15088.2664, 3);
});

test('its edges are pi (150 + 57.35) = 651.41 mm long', () => {
  // 207.35 x 3.14159265 = 651.4092
  expect(perimeterOf(ring)).toBeCloseTo(651.4092, 3);
});

test('in 6 mm steel of 7850 kg/m³ it weighs 0.711 kg', () => {
  // 15088.2664 x 6 = 90529.5985 mm3; x 7850e-9 = 0.710657
  expect(massOf(ring, 7850)).toBeCloseTo(0.710657, 5);
});

test('six holes of 11 take 6 x 95.033 = 570.2 mm² away, marks and etched lines nothing', () => {
  // pi/4 x 121 = 95.0332; 15088.2664 - 570.1991 = 14518.0673
  expect(netArea(adapter)).toBeCloseTo(14518.0673, 3);
});
