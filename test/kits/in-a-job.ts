// A kit in a job of its own, as the tests of each kit use it: run, changed, set by hand.
import { expect } from 'vitest';
import {
  addKit,
  applyChange,
  createJob,
  kitFindings,
  requestForRow,
  runKit,
  runPart,
  setKitNumbers,
  setParameter,
  startingShop,
  type Change,
  type Job,
  type KitAnswer,
  type KitRun,
  type Row,
} from '../../parts-library/job/index.js';
import type { Finding, Json, Part } from '../../parts-library/model/index.js';

const computedWith = { library: '0', chartVersion: '0', shopRevision: 0, seed: 1, lanes: 1, iterations: 0 };
const empty: Job = createJob({ id: 'job', name: 'Orchard cart', unit: 'mm', computedWith });

function take(job: Job, answer: KitAnswer<Change> | Change): Job {
  const change = 'ok' in answer ? (answer.ok ? answer.value : undefined) : answer;
  if (change === undefined) throw new Error('The kit refused.');
  const applied = applyChange(job, change);
  if (!applied.ok) throw new Error(applied.problem.says);
  return applied.job;
}

export function kitBench(kit: string) {
  const run = (numbers: object = {}): KitRun => {
    const answer = runKit(kit, numbers, 'mm', startingShop);
    if (!answer.ok) throw new Error(answer.problems.map(({ says }) => says).join(' '));
    return answer.value;
  };
  const memberOf = (ran: KitRun, role: string) => {
    const member = ran.members.find((one) => one.role === role);
    if (member === undefined) throw new Error(`There is no ${role}.`);
    return member;
  };
  const partIn = (ran: KitRun, role: string): Part => {
    const { run: one } = memberOf(ran, role);
    if (one.value === undefined) throw new Error(`${role} is not drawn: ${one.findings[0]?.says ?? ''}`);
    return one.value.part;
  };
  const findingIn = (ran: KitRun, code: string): Finding => {
    const found = ran.findings.find((one) => one.code === code);
    if (found === undefined) throw new Error(`No finding "${code}".`);
    return found;
  };
  const derivedIn = (ran: KitRun, id: string) => {
    const found = ran.derived.find((one) => one.id === id);
    if (found === undefined) throw new Error(`No derived value "${id}".`);
    return found;
  };
  const inJob = (numbers: object = {}): Job =>
    take(empty, addKit(empty, { id: 'kit', kit, name: 'Kit', numbers }));
  const changed = (job: Job, numbers: object): Job => take(job, setKitNumbers(job, 'kit', numbers));
  const byHand = (job: Job, role: string, parameter: string, value: Json): Job =>
    take(job, setParameter(job, `kit.${role}`, parameter, value));
  const rowOf = (job: Job, role: string): Row => {
    const row = job.rows.find((one) => one.role === role);
    if (row === undefined) throw new Error(`There is no ${role}.`);
    return row;
  };
  const partOfRow = (job: Job, role: string): Part => {
    const { value } = runPart(requestForRow(job, rowOf(job, role)), startingShop);
    if (value === undefined) throw new Error(`${role} is not drawn.`);
    return value.part;
  };
  const findingsOver = (job: Job): readonly Finding[] =>
    kitFindings(
      job,
      'kit',
      new Map(job.rows.map((row) => [row.id, runPart(requestForRow(job, row), startingShop)])),
    );
  return {
    run,
    memberOf,
    partIn,
    findingIn,
    derivedIn,
    inJob,
    changed,
    byHand,
    rowOf,
    partOfRow,
    findingsOver,
  };
}

/** Nothing a person reads may hold the leavings of a sum that went wrong. */
export function expectPlainWords(ran: KitRun): void {
  const words = [
    ...ran.derived.map(({ text }) => text),
    ...ran.findings.map(({ title, says, formula = '' }) => `${title} ${says} ${formula}`),
    ...ran.members.flatMap(({ run: { findings } }) => findings.map(({ title, says }) => `${title} ${says}`)),
  ].join(' ');
  expect(words).not.toMatch(/NaN|undefined|Infinity|\[object/);
}
