// The usual cautions for parts that can hurt someone. None of these says that a part is safe.
import type { Material, Source } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import { found } from './findings.js';

export type PartUse = 'drive' | 'brake' | 'steering' | 'tow' | 'lift' | 'other';

const PRACTICE: Source = {
  title: 'Usual caution',
  where: 'local code, the torch’s manual and licensed practice come first',
  certainty: 'common practice',
};

const USE_WORDS: Readonly<
  Record<Exclude<PartUse, 'other'>, { readonly title: string; readonly says: string }>
> = {
  brake: {
    title: 'Brake part: have a qualified person check it',
    says: 'These checks screen geometry and static strength only. Cut edges are notched and hard; fatigue is not covered. Local vehicle rules may forbid welded or home-made brake parts.',
  },
  steering: {
    title: 'Steering part: have a qualified person check it',
    says: 'These checks screen geometry and static strength only. Inspection rules reject welds and heat on steering linkage in many places; fatigue is not covered.',
  },
  tow: {
    title: 'Towing part: have a qualified person check it',
    says: 'These checks screen geometry and static strength only. A tow jerks with several times its steady pull; local rules may ask for approved couplings.',
  },
  lift: {
    title: 'Lifting part: have a qualified person check it',
    says: 'These checks screen geometry and static strength only. Lifting gear is designed, marked and proof-tested under its own rules; stay clear of what hangs.',
  },
  drive: {
    title: 'Drive part: guard the chain, and check bolts and weld after the first hour',
    says: 'Checks are static. Starts, shock and fatigue are not covered; a chain nips fingers and throws what it breaks.',
  },
};

/** The caution of the part's use. */
export function checkUse(use: PartUse): readonly Finding[] {
  if (use === 'other') return [];
  const words = USE_WORDS[use];
  return [
    found({
      code: `use-${use}`,
      level: use === 'drive' ? 'note' : 'caution',
      field: 'use',
      title: words.title,
      says: words.says,
      source: PRACTICE,
    }),
  ];
}

const HUB_WORDS: Readonly<
  Record<'unknown' | 'leaded' | 'hardened' | 'plated', { readonly title: string; readonly says: string }>
> = {
  unknown: {
    title: 'the hub’s steel',
    says: 'File it, spark it, look for plating, ask the maker: plain low-carbon steel welds; leaded, hardened or plated hubs do not weld like it.',
  },
  leaded: {
    title: 'Leaded free-cutting hub: the weld may crack',
    says: 'Lead and sulphur make the bead hot short and porous, and lead is in the fume. A bolt-on or a low-carbon weld-on hub would do.',
  },
  hardened: {
    title: 'Hardened or alloyed hub: the weld may crack beside the bead',
    says: 'It needs preheat and a procedure for that steel, from someone qualified for it. A low-carbon weld-on hub would do.',
  },
  plated: {
    title: 'Plated hub: take the plating off before welding',
    says: 'Zinc and cadmium fume is poisonous. Grind or strip well back from the joint, outdoors or with extraction.',
  },
};

const HUB_SOURCE: Source = {
  title: 'Weld-on hub in a plate',
  where: 'ask the hub’s steel before striking an arc',
  certainty: 'common practice',
};

/** What the hub's steel means for the weld. */
export function checkHubSteel(
  steel: 'unknown' | 'carbon' | 'leaded' | 'hardened' | 'plated',
): readonly Finding[] {
  if (steel === 'carbon') return [];
  const words = HUB_WORDS[steel];
  return [
    found({
      code: steel === 'unknown' ? 'not-checked' : 'hub-steel',
      level: steel === 'unknown' ? 'note' : 'caution',
      field: 'hubSteel',
      title: words.title,
      says: words.says,
      source: HUB_SOURCE,
    }),
  ];
}

/** What the handbook says must be known before a material's figures are trusted. */
export function checkMaterialCaution(material: Material): readonly Finding[] {
  if (material.caution === undefined) return [];
  return [
    found({
      code: 'material',
      level: 'note',
      field: 'material',
      title: `${material.name}: know this before trusting its figures`,
      says: material.caution,
      source: material.source,
    }),
  ];
}
