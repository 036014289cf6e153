// The rule that holds the floors must be able to fail.
import { describe, expect, test } from 'vitest';
import { FLOORS, judgeImport } from './floors.js';

describe('floors of the house', () => {
  test('a part may use a check, a check may not use a part', () => {
    expect(
      judgeImport('parts-library/parts/adapter-plate/check.ts', 'parts-library/checks/index.ts'),
    ).toBeUndefined();
    expect(judgeImport('parts-library/checks/edge.ts', 'parts-library/parts/index.ts')).toMatch(
      /may not look up/,
    );
  });

  test('a neighbour is entered through its index only', () => {
    expect(judgeImport('parts-library/checks/edge.ts', 'parts-library/handbook/threads.ts')).toMatch(
      /go through handbook/,
    );
  });

  test('geometry and units know nobody', () => {
    expect(FLOORS['geometry']).toEqual([]);
    expect(FLOORS['units']).toEqual([]);
  });

  test('nesting and cutting know no families', () => {
    expect(FLOORS['nesting']).not.toContain('parts');
    expect(FLOORS['cutting']).not.toContain('parts');
  });
});
