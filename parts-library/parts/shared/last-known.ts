// Shapes that cost something and seldom change: the last one is kept, so that an edit elsewhere finds it as it was.

/**
 * A maker that gives its last result again while what it depends on is the same. The same object then stands for the
 * same shape, so what was worked out about it need not be worked out again.
 *
 * @param make depends on nothing but its arguments, which never change in themselves
 * @example const outline = lastKnown((teeth: number) => draw(teeth)); outline(60) === outline(60)
 */
export function lastKnown<A extends readonly unknown[], R>(make: (...given: A) => R): (...given: A) => R {
  let last: { readonly given: A; readonly result: R } | undefined;
  return (...given) => {
    if (last !== undefined && last.given.every((one, index) => Object.is(one, given[index]))) {
      return last.result;
    }
    const result = make(...given);
    last = { given, result };
    return result;
  };
}
