// Computed values that stay the same object while they say the same, so that only what changed is drawn again.
import { computed, type ReadonlySignal } from '@preact/signals';

/**
 * A computed signal that keeps its former value when `same` finds no difference.
 * Followers compare by identity, and so are not woken for nothing.
 */
export function steady<T>(compute: () => T, same: (before: T, after: T) => boolean): ReadonlySignal<T> {
  let kept: { readonly value: T } | undefined;
  return computed(() => {
    const value = compute();
    if (kept !== undefined && same(kept.value, value)) return kept.value;
    kept = { value };
    return value;
  });
}

/** Equal as plain data: both write the same JSON. For small values; a finding, a view, a place. */
export const sameData = (before: unknown, after: unknown): boolean =>
  before === after || JSON.stringify(before) === JSON.stringify(after);

/** Lists of the same items in the same order. */
export const sameItems = (before: readonly unknown[], after: readonly unknown[]): boolean =>
  before.length === after.length && before.every((item, index) => item === after[index]);

/** A list that keeps those of its former items that say the same. */
export function steadyList<T>(compute: () => readonly T[]): ReadonlySignal<readonly T[]> {
  let kept = new Map<string, T>();
  let last: readonly T[] = [];
  return computed(() => {
    const next = new Map<string, T>();
    const list = compute().map((item) => {
      const text = JSON.stringify(item);
      const steadyItem = kept.get(text) ?? item;
      next.set(text, steadyItem);
      return steadyItem;
    });
    kept = next;
    if (!sameItems(last, list)) last = list;
    return last;
  });
}
