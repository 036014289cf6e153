// A part that cannot be drawn: one stop finding that names the field and what would do.
import type { Finding, Staged } from '../../model/index.js';

/**
 * No part, and why.
 * @param what the part in a sentence, for example `bracket`
 * @param field the parameter that a person would change
 * @param says what does not go together, with its numbers, and what would do
 */
export function refuseToDraw(what: string, field: string, says: string): Staged<undefined> {
  const finding: Finding = {
    code: 'cannot-draw',
    level: 'stop',
    stage: 'draw',
    subject: {},
    field,
    title: `This ${what} cannot be drawn`,
    says,
    source: { title: 'Plane geometry', where: 'construction of the part', certainty: 'common practice' },
  };
  return { value: undefined, findings: [finding] };
}
