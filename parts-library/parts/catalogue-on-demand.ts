// The same catalogue for the page: a family's code is fetched when a job first needs it, so that the first sheet stays
// small whatever the catalogue holds.
import type { Family } from './family.js';

const LOADERS: Readonly<Record<string, () => Promise<Family>>> = {
  'adapter-plate': async () => (await import('./adapter-plate/index.js')).adapterPlate,
  'sprocket-plate': async () => (await import('./sprocket-plate/index.js')).sprocketPlate,
  'sprocket-blank': async () => (await import('./sprocket-blank/index.js')).sprocketBlank,
  'ring-spacer': async () => (await import('./ring-spacer/index.js')).ringSpacer,
  'bearing-spacer': async () => (await import('./bearing-spacer/index.js')).bearingSpacer,
  'disc-carrier': async () => (await import('./disc-carrier/index.js')).discCarrier,
  'wheel-hub-adapter': async () => (await import('./wheel-hub-adapter/index.js')).wheelHubAdapter,
  'pedal-arm': async () => (await import('./pedal-arm/index.js')).pedalArm,
  'pedal-base': async () => (await import('./pedal-base/index.js')).pedalBase,
  'pivot-bracket': async () => (await import('./pivot-bracket/index.js')).pivotBracket,
  'cable-stop': async () => (await import('./cable-stop/index.js')).cableStop,
  tab: async () => (await import('./tab/index.js')).tab,
  gusset: async () => (await import('./gusset/index.js')).gusset,
  'tube-cap': async () => (await import('./tube-cap/index.js')).tubeCap,
  'bent-bracket': async () => (await import('./bent-bracket/index.js')).bentBracket,
  'mounting-plate': async () => (await import('./mounting-plate/index.js')).mountingPlate,
  'bearing-flange': async () => (await import('./bearing-flange/index.js')).bearingFlange,
  'tensioner-arm': async () => (await import('./tensioner-arm/index.js')).tensionerArm,
  'chain-guard': async () => (await import('./chain-guard/index.js')).chainGuard,
  'slot-tab-joint': async () => (await import('./slot-tab-joint/index.js')).slotTabJoint,
  'tack-jig': async () => (await import('./tack-jig/index.js')).tackJig,
  'own-outline': async () => (await import('./own-outline/index.js')).ownOutline,
  'coupon-kerf': async () => (await import('./coupon-kerf/index.js')).couponKerf,
  'coupon-pierce': async () => (await import('./coupon-pierce/index.js')).couponPierce,
  'coupon-speed': async () => (await import('./coupon-speed/index.js')).couponSpeed,
  'coupon-holes': async () => (await import('./coupon-holes/index.js')).couponHoles,
  'coupon-fit': async () => (await import('./coupon-fit/index.js')).couponFit,
};

const loaded = new Map<string, Family>();

export const listFamilies = (): readonly Family[] =>
  Object.keys(LOADERS).flatMap((id) => loaded.get(id) ?? []);

export const findFamily = (id: string): Family | undefined => loaded.get(id);

export async function loadFamilies(ids: readonly string[]): Promise<void> {
  const wanted = [...new Set(ids)].filter((id) => !loaded.has(id));
  await Promise.all(
    wanted.map(async (id) => {
      const load = Object.hasOwn(LOADERS, id) ? LOADERS[id] : undefined;
      if (load !== undefined) loaded.set(id, await load());
    }),
  );
}
