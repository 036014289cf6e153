// The bench's state, handed to every part of the page.
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Bench } from './bench.js';

export const BenchContext = createContext<Bench | undefined>(undefined);

/** The bench that this part of the page belongs to. */
export function useBench(): Bench {
  const bench = useContext(BenchContext);
  if (bench === undefined) throw new Error('This part of the page stands outside a bench.');
  return bench;
}
