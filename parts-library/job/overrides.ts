// Accepted stops: a person takes a finding upon themselves, with a reason, until what it judged changes.
import type { Finding } from '../model/index.js';
import { digestOf } from './canonical.js';
import type { Change } from './change.js';
import { freshJson } from './json-guard.js';
import type { Job, Override } from './types.js';

/**
 * Digest of what a finding judged: rule, subject, number and limit. Wording and unit of display are not in it.
 * @example findingDigest(finding) === findingDigest({ ...finding, says: 'in other words' }) // true
 */
export function findingDigest(finding: Finding): string {
  const { code, level, subject, field, value, limit } = finding;
  return digestOf({ code, level, subject, field, value, limit });
}

/** True when a stored override is about this finding and has not lapsed. */
export function isOverridden(finding: Finding, overrides: readonly Override[]): boolean {
  const digest = findingDigest(finding);
  return overrides.some((one) => one.code === finding.code && one.digest === digest);
}

/**
 * The change that stores an override.
 * @param because why it is accepted, and the day as text
 */
export function overrideFinding(
  finding: Finding,
  because: { readonly reason: string; readonly date: string },
): Change {
  const value: Override = {
    code: finding.code,
    subject: finding.subject,
    digest: findingDigest(finding),
    ...because,
  };
  return {
    says: `Accept: ${finding.title}`.slice(0, 200),
    patch: [{ op: 'add', path: '/overrides/-', value: freshJson(value) }],
  };
}

/** The overrides of a job that are about nothing any more: what they judged has changed. */
export function lapsedOverrides(job: Job, findings: readonly Finding[]): readonly Override[] {
  const current = new Set(findings.map(findingDigest));
  return job.overrides.filter((one) => !current.has(one.digest));
}
