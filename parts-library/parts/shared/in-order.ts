// Dimensions numbered in the order in which they are written down.
import type { Dimension } from '../../model/index.js';

type Unnumbered<D> = D extends Dimension ? Omit<D, 'order'> : never;

/** A dimension before it has its place in the order. */
export type DimensionSpec = Unnumbered<Dimension>;

/** Numbers them from 1; what is left out (`undefined`) takes no number. */
export function inOrder(specs: readonly (DimensionSpec | undefined)[]): readonly Dimension[] {
  return specs
    .filter((spec) => spec !== undefined)
    .map((spec, index): Dimension => ({ ...spec, order: index + 1 }));
}
