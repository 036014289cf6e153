import { describe, expect, test } from 'vitest';
import {
  boltShear,
  breakingLoad,
  equalStrengthEngagement,
  findGrade,
  listThreads,
  preload,
  proofLoad,
  shearAreas,
  stripStrength,
  threadLimits,
  tighteningTorque,
} from '../../parts-library/handbook/index.js';
import { grade, thread } from './rows.js';

const lbf = 4.4482216;
const inchPounds = (newtonMetres: number): number => newtonMetres / 0.112984829;

describe('bolt loads', () => {
  // ISO 898-1 proof loads: M8 8.8 21.2 kN, M10 8.8 33.6, M10 10.9 48.1, M12 10.9 70.0.
  test.each([
    ['M8', '8.8', 21.2],
    ['M10', '8.8', 33.6],
    ['M10', '10.9', 48.1],
    ['M12', '10.9', 70],
  ])('%s %s proves %d kN', (name, klass, kilonewtons) => {
    const bolt = thread(name);
    expect(Math.abs(proofLoad(bolt, grade(klass, bolt)) / 1000 - kilonewtons)).toBeLessThanOrEqual(0.05);
  });

  // EN ISO 898-1 ultimate loads, public reprint: M8 8.8 29.2 kN, M10 10.9 60.3, M12 12.9 103.
  test.each([
    ['M8', '8.8', 29.2, 0.1],
    ['M10', '10.9', 60.3, 0.05],
    ['M12', '12.9', 103, 0.5],
  ])('%s %s breaks at %d kN', (name, klass, kilonewtons, printedTo) => {
    const bolt = thread(name);
    expect(Math.abs(breakingLoad(bolt, grade(klass, bolt)) / 1000 - kilonewtons)).toBeLessThanOrEqual(
      printedTo,
    );
  });

  // Published torque–tension tables: preload lb, torque in-lb dry and lubricated.
  test.each([
    ['1/4-20', 'grade 5', 2029, 101, 76],
    ['3/8-16', 'SAE 5', 4940, 370, 278],
    ['1/2-13', 'gr 8', 12771, 1277, 958],
    ['3/4-10', '5', 21293, 266 * 12, 200 * 12],
  ])('%s %s is tightened to %d lb', (name, written, pounds, dry, lubricated) => {
    const bolt = thread(name);
    const strength = grade(written, bolt);
    expect(Math.abs(preload(bolt, strength) / lbf / pounds - 1)).toBeLessThan(0.0015);
    expect(Math.abs(inchPounds(tighteningTorque(bolt, strength, 'dry').value) / dry - 1)).toBeLessThan(0.005);
    expect(
      Math.abs(inchPounds(tighteningTorque(bolt, strength, 'lubricated').value) / lubricated - 1),
    ).toBeLessThan(0.005);
  });

  // By hand: M10 8.8 0.2 × 10 × 25.23 kN = 50.5 N·m; M16 8.8 218.5 N·m.
  test('M10 8.8 takes 50.5 N·m dry, M16 8.8 218.5', () => {
    const m10 = thread('M10');
    const m16 = thread('M16');
    expect(tighteningTorque(m10, grade('8.8', m10), 'dry').value).toBeCloseTo(50.46, 2);
    expect(tighteningTorque(m16, grade('8.8', m16), 'dry').value).toBeCloseTo(218.54, 2);
  });

  // EN 1993-1-8 Table 3.4 (from memory): M10 8.8 threads in shear 0.6 × 800 × 58 = 27.84 kN, over 1.25 22.27 kN.
  test('an M10 8.8 shears at 27.8 kN and is designed to 22.3', () => {
    const m10 = thread('M10');
    const shear = boltShear(m10, grade('8.8', m10));
    expect(shear.characteristicNewtons).toBeCloseTo(27840, 6);
    expect(shear.designNewtons).toBeCloseTo(22272, 6);
    expect(boltShear(m10, grade('10.9', m10)).factor).toBe(0.5);
  });

  test('grades are found as they are written, in the band of the bolt', () => {
    expect(grade('8,8', thread('M16')).proofMegapascals).toBe(580);
    expect(grade('class 8.8', thread('M18')).proofMegapascals).toBe(600);
    expect(grade('Grade 8', thread('1/2-13')).name).toBe('SAE 8');
    expect(grade('SAE grade 2', thread('3/4-10')).note).toContain('33 ksi');
    const answer = findGrade('A2-70', thread('M10'));
    expect(answer).toMatchObject({ found: false, known: ['8.8', '10.9', '12.9', 'SAE 2', 'SAE 5', 'SAE 8'] });
  });
});

describe('thread stripping', () => {
  // ASME B1.1 printed limits, from memory: 1/2-13 UNC-2B minor max 0.434, 2A pitch diameter min 0.4435.
  test('1/2-13 limits are those printed', () => {
    const limits = threadLimits(thread('1/2-13'));
    expect((limits?.holeMinorMax ?? 0) / 25.4).toBeCloseTo(434 / 1000, 3);
    expect((limits?.boltPitchMin ?? 0) / 25.4).toBeCloseTo(0.4435, 4);
  });

  // ISO 965-2 limits of M8 6g/6H, from memory: D1 max 6.912, d2 min 7.042, d min 7.760, D2 max 7.348.
  test('M8 limits are those printed', () => {
    const limits = threadLimits(thread('M8'));
    expect(limits?.holeMinorMax).toBeCloseTo(6.912, 3);
    expect(limits?.boltPitchMin).toBeCloseTo(7.042, 3);
    expect(limits?.boltMajorMin).toBeCloseTo(7.76, 3);
    expect(limits?.holePitchMax).toBeCloseTo(7.348, 3);
  });

  test('every thread has limits, and none leaves the thread without depth', () => {
    for (const row of listThreads()) {
      const limits = threadLimits(row);
      expect(limits, row.name).toBeDefined();
      if (limits === undefined) continue;
      expect(limits.boltPitchMin, row.name).toBeLessThan(row.pitchDiameter);
      expect(limits.holePitchMax, row.name).toBeGreaterThan(row.pitchDiameter);
      expect(limits.holeMinorMax, row.name).toBeLessThan(limits.boltPitchMin);
      expect(limits.boltMajorMin, row.name).toBeGreaterThan(limits.holePitchMax);
    }
  });

  // FED-STD-H28/2B by hand, 6g/6H limits: AS 12.16, AN 16.83 mm² per mm.
  test('M8 shear areas are 12.16 and 16.83 mm² per mm', () => {
    const areas = shearAreas(thread('M8'));
    expect(areas?.bolt).toBeCloseTo(12.16, 2);
    expect(areas?.plate).toBeCloseTo(16.83, 2);
  });

  // Machinery's Handbook Formula 1 with 2A/2B limits: Le = 0.364 in.
  test('1/2-13 breaks and strips together at 0.364 in', () => {
    expect((equalStrengthEngagement(thread('1/2-13')) ?? 0) / 25.4).toBeCloseTo(0.364, 3);
  });

  // By hand from AN 16.83 and 0.577 Rm: S235 (360) 8.4 mm, S275 (410) 7.4 mm.
  test('an M8 8.8 needs 8.4 mm of S235, 7.4 of S275', () => {
    expect(stripStrength(thread('M8'), 6, 800, 360)?.engagementNeeded).toBeCloseTo(8.4, 1);
    expect(stripStrength(thread('M8'), 6, 800, 410)?.engagementNeeded).toBeCloseTo(7.4, 1);
  });

  test('in 6 mm of S235 the plate strips first; in 9 mm the bolt breaks', () => {
    expect(stripStrength(thread('M8'), 6, 800, 360)?.governs).toBe('plate thread');
    expect(stripStrength(thread('M8'), 9, 800, 360)?.governs).toBe('bolt breaks');
  });

  // 29280 / (12.16 × 0.577 × 800) = 5.2 mm: in a plate as strong as the bolt its own thread goes first below that.
  test('in hard plate the bolt’s own thread decides at 5.2 mm', () => {
    expect(stripStrength(thread('M8'), 4, 800, 1200)?.governs).toBe('bolt thread');
    expect(stripStrength(thread('M8'), 4, 800, 1200)?.engagementNeeded).toBeCloseTo(5.2, 1);
  });
});
