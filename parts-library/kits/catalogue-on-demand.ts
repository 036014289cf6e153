// The same kits for the page: a kit's code is fetched when a job first needs it.
import type { Kit } from './kit.js';

const LOADERS: Readonly<Record<string, () => Promise<Kit>>> = {
  'sprocket-carrier': async () => (await import('./sprocket-carrier/index.js')).sprocketCarrier,
  'pedal-set': async () => (await import('./pedal-set/index.js')).pedalSet,
  'hub-pair': async () => (await import('./hub-pair/index.js')).hubPair,
};

const loaded = new Map<string, Kit>();

export const listKits = (): readonly Kit[] => Object.keys(LOADERS).flatMap((id) => loaded.get(id) ?? []);

export const findKit = (id: string): Kit | undefined => loaded.get(id);

export async function loadKits(ids: readonly string[]): Promise<void> {
  const wanted = [...new Set(ids)].filter((id) => !loaded.has(id));
  await Promise.all(
    wanted.map(async (id) => {
      const load = Object.hasOwn(LOADERS, id) ? LOADERS[id] : undefined;
      if (load !== undefined) loaded.set(id, await load());
    }),
  );
}
