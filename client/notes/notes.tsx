// The notes column: findings numbered worst first, and the checks that passed folded into one line.
import { useBench } from '../state/bench-context.js';
import { Note } from './note.js';

function Passes() {
  const { passes } = useBench().print;
  const list = passes.value;
  if (list.length === 0) return null;
  return (
    <details class="passes">
      <summary>
        {list.length} {list.length === 1 ? 'check' : 'checks'} passed: within the rules that were applied,
        which is not a promise that the part is safe
      </summary>
      <ul>
        {list.map((finding) => (
          <li key={`${finding.code} ${finding.subject.featureId ?? ''}`}>
            <p>{finding.title}</p>
            {finding.formula !== undefined && <p class="formula">{finding.formula}</p>}
            <p class="source">
              {finding.source.title}, {finding.source.where} ({finding.source.certainty})
            </p>
          </li>
        ))}
      </ul>
    </details>
  );
}

export function Notes() {
  const { notes } = useBench().print;
  const list = notes.value;
  return (
    <section class="notes" aria-labelledby="notes-heading">
      <h2 id="notes-heading">Notes</h2>
      <ol>
        {list.map((note) => (
          <Note key={`${note.finding.code} ${note.number}`} {...note} />
        ))}
      </ol>
      <Passes />
    </section>
  );
}
