// Cut settings that make no sense are refused before anything is planned.
import type { CutSettings } from './types.js';

/** Thrown for a setting that no cut can be planned with; `field` is the setting's name. */
export class CutSettingsError extends Error {
  readonly field: keyof CutSettings;

  constructor(field: keyof CutSettings, message: string) {
    super(message);
    this.name = 'CutSettingsError';
    this.field = field;
  }
}

const ABOVE_NOUGHT = ['kerf', 'holeKerf', 'speed', 'thickness'] as const;
const NOT_BELOW_NOUGHT = ['kerfPlusMinus', 'pierceSeconds'] as const;

/** @throws CutSettingsError naming the first setting that is not a number or has the wrong sign. */
export function requireUsableSettings(settings: CutSettings): void {
  for (const field of ABOVE_NOUGHT) {
    const value = settings[field];
    if (!(value > 0 && Number.isFinite(value)))
      throw new CutSettingsError(field, `${field} is ${value}; a number above nought is wanted.`);
  }
  for (const field of NOT_BELOW_NOUGHT) {
    const value = settings[field];
    if (!(value >= 0 && Number.isFinite(value)))
      throw new CutSettingsError(field, `${field} is ${value}; nought or more is wanted.`);
  }
}
