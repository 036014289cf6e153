// The notes column: findings numbered worst first, and the checks that passed folded into one line.
import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { useBench } from '../state/bench-context.js';
import { Note } from './note.js';
import { Operations } from './operations.js';

function PassedChecks() {
  const { passes } = useBench().print;
  return (
    <ul>
      {passes.value.map((finding) => (
        <li key={`${finding.code} ${finding.subject.featureId ?? ''}`}>
          <p>{finding.title}</p>
          {finding.formula !== undefined && <p class="formula">{finding.formula}</p>}
          <p class="source">
            {finding.source.title}, {finding.source.where} ({finding.source.certainty})
          </p>
        </li>
      ))}
    </ul>
  );
}

function Passes() {
  const { passCount } = useBench().print;
  const open = useSignal(false);
  const count = passCount.value;
  if (count === 0) return null;
  return (
    <details class="passes" onToggle={(event) => (open.value = event.currentTarget.open)}>
      <summary>
        {count} {count === 1 ? 'check' : 'checks'} passed
      </summary>
      <p class="small">Within the rules that were applied. That does not call the part safe.</p>
      {open.value && <PassedChecks />}
    </details>
  );
}

export function Notes() {
  const { notes } = useBench().print;
  const list = notes.value;
  // Notes that say the same as before are the same objects, and are not drawn again.
  const items = useMemo(
    () => list.map((note) => <Note key={`${note.finding.code} ${note.number}`} {...note} />),
    [list],
  );
  return (
    <section class="notes" aria-labelledby="notes-heading">
      <h2 id="notes-heading">Notes</h2>
      <ol>{items}</ol>
      <Passes />
      <Operations />
    </section>
  );
}
