// Parts that hold a wheel or a brake: withheld until somebody takes the cut plate on as a blank to be machined.
import type { Source } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import { found } from './findings.js';

/** `withheld`: no files. `machined`: the cut plate is a blank, and the print says what a machinist makes of it. */
export type Release = 'withheld' | 'machined';

const BLANK: Source = {
  title: 'Brake carriers and hub adapters are machined parts',
  where: 'a torch holds no pilot fit, no flat seat and no true hole circle; ISO 9013 against ISO 286',
  certainty: 'common practice',
};

/**
 * A stop while the part is withheld. Once it is released as a blank the finding stays as a caution that carries
 * everything the machinist needs, so that it stands on the print.
 *
 * @param what the part in a sentence, for example `brake-disc carrier`
 * @param loses what comes off when it fails: `brake` or `wheel`
 * @param orders pilots with fits, seats with flatness, runout, studs, allowances: one sentence each
 */
export function checkMachinedBlank(
  release: Release,
  what: string,
  loses: 'brake' | 'wheel',
  orders: readonly string[],
): readonly Finding[] {
  const place = { code: 'machined-blank', field: 'release', source: BLANK } as const;
  if (release === 'withheld') {
    return [
      found({
        ...place,
        level: 'stop',
        title: `Withheld: a ${what} as the torch leaves it can lose the ${loses}`,
        says: 'Pilots, seats and bolt holes need a lathe and a drill, not a torch. Release it as a blank to be machined: bores and faces keep an allowance, the print says what is machined to which fit, and a qualified person checks it before it is used.',
        remedies: [
          {
            says: 'Release it as a blank to be machined',
            change: [{ op: 'add', path: '/release', value: 'machined' }],
          },
        ],
      }),
    ];
  }
  return [
    found({
      ...place,
      level: 'caution',
      title: 'Blank to be machined, not a finished part: have a qualified person check it',
      says: orders.join(' '),
    }),
  ];
}
