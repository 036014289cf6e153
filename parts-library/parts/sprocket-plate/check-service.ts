// How long and how smoothly the teeth will run: few teeth, wear of the plate's steel.
import { digits, found, judge, percent, quantity, type Facts } from '../../checks/index.js';
import {
  chordalSource,
  chordalVariation,
  SMOOTH_TEETH,
  type Material,
  type Source,
} from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';

/** Below this many teeth the pulsing shakes a small vehicle and the teeth wear fast. */
const ROUGH_TEETH = 12;

/** Few teeth: the chain's speed swings with every tooth. */
export function checkFewTeeth(teeth: number): readonly Finding[] {
  const swing = chordalVariation(teeth);
  return [
    found({
      code: 'few-teeth',
      level: judge(['caution', teeth < ROUGH_TEETH], ['note', teeth < SMOOTH_TEETH]),
      field: 'teeth',
      title: `${teeth} teeth: chain speed swings ${percent(swing)}`,
      says:
        teeth < SMOOTH_TEETH
          ? `From ${SMOOTH_TEETH} teeth on it runs smoothly. Few teeth hammer, wear fast and want a hardened sprocket from the trade; more teeth on both ends keep the ratio.`
          : 'Smooth enough.',
      value: quantity(teeth, 'teeth'),
      limit: quantity(SMOOTH_TEETH, 'teeth'),
      formula: `1 − cos(180°/${teeth}) = ${digits(swing, 4)}`,
      source: chordalSource,
    }),
  ];
}

const WEAR: Source = {
  title: 'Wear of sprocket teeth',
  where:
    'sold sprockets are hardened medium-carbon steel; a plasma edge is hard for a fraction of a millimetre only',
  certainty: 'common practice',
};

/** Teeth of the plate's steel against those of the trade. */
export function checkWear(material: Material, teeth: number, facts: Facts): readonly Finding[] {
  const isSoft = material.family === 'aluminium';
  const isStainless = material.family === 'stainless steel';
  return [
    found({
      code: 'tooth-wear',
      level: judge(['caution', isSoft || teeth < SMOOTH_TEETH], ['note', true]),
      field: 'material',
      title: isSoft
        ? `Teeth of ${material.name} wear away under a steel chain`
        : isStainless
          ? `Teeth of ${material.name} are soft and gall dry`
          : `Teeth of ${material.name} are not hardened`,
      says: isSoft
        ? 'Aluminium is for light, clean, slow drives, and is looked at often. A steel plate would do.'
        : `Oil the chain, look at the teeth every few weeks, and renew sprocket and chain together: hooked teeth or ${facts.format.length(1)} worn off a flank mean a new one. A medium-carbon or wear plate lasts longer; the edge's own hardness is a thin skin that files off.`,
      value: quantity(teeth, 'teeth'),
      source: WEAR,
    }),
  ];
}
