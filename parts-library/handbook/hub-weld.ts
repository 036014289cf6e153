// A fillet all round a hub: torsion, bending of an offset pull, direct shear, and their sum on the throat.

import { throatOverLeg } from './fillet-weld.js';
import type { Source } from './source.js';

export interface HubWeldQuestion {
  /** Outside radius of the hub, where the weld sits, mm. */
  readonly radius: number;
  /** Fillet leg, mm. */
  readonly leg: number;
  /** Welded on one face of the plate or on both. */
  readonly sides: 1 | 2;
  /** Torque about the hub, N·m. */
  readonly newtonMetres: number;
  /** Bending moment on the weld from a pull beside the plate, N·m. */
  readonly bendingNewtonMetres?: number;
  /** Pull across the hub, N. */
  readonly shearNewtons?: number;
}

/** Stresses on the throat, MPa. */
export interface HubWeld {
  readonly torsion: number;
  readonly bending: number;
  readonly shear: number;
  /** Torsion and shear add where they point the same way; bending stands square to them. */
  readonly combined: number;
  /** Unit polar second moment 2 π r³, mm³ (times 0.707 leg is J, mm⁴). */
  readonly unitPolar: number;
  readonly throat: number;
  readonly source: Source;
}

/**
 * Stress in a circular fillet about a hub: torsion T r/J, J = 2 π r³ × 0.707 h; bending M r/I, I = π r³ × 0.707 h;
 * shear over the throat's area 1.414 π h r. Two welds halve them. Fatigue is not covered.
 *
 * @example hubWeldStress({radius: 25, leg: 6, sides: 1, newtonMetres: 2000}).torsion // 120.06
 */
export function hubWeldStress(question: HubWeldQuestion): HubWeld {
  const { radius, leg, sides, newtonMetres, bendingNewtonMetres = 0, shearNewtons = 0 } = question;
  const throat = throatOverLeg * leg;
  const unitPolar = 2 * Math.PI * radius ** 3;
  const unitBending = Math.PI * radius ** 3;
  const torsion = (1000 * newtonMetres * radius) / (sides * throat * unitPolar);
  const bending = (1000 * bendingNewtonMetres * radius) / (sides * throat * unitBending);
  const shear = shearNewtons / (sides * throat * 2 * Math.PI * radius);
  return {
    torsion,
    bending,
    shear,
    combined: Math.hypot(Math.abs(torsion) + Math.abs(shear), bending),
    unitPolar,
    throat,
    source: {
      title: 'Shigley’s Mechanical Engineering Design',
      where: 'welds in torsion, problems 9-8 and 9-45 (10th ed.); Iu = π r³ for bending recalled',
      certainty: 'published',
    },
  };
}

/**
 * Shear stress allowed on a fillet's throat: 0.30 FEXX, MPa.
 *
 * @example allowableWeldShear(490) // 147
 */
export function allowableWeldShear(electrodeMegapascals: number): number {
  return 0.3 * electrodeMegapascals;
}
