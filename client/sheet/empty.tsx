// A job without parts says what to do next.
import { useBench } from '../state/bench-context.js';

export function Empty() {
  const bench = useBench();
  return (
    <section class="empty">
      <h2>No part yet</h2>
      <p>Choose what to make. It opens with starting values; type what you measured over them.</p>
      <ul>
        {bench.families.map((family) => (
          <li key={family.id}>
            <button type="button" onClick={() => void bench.addPart(family)}>
              {family.title}
            </button>
            <span>{family.summary}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
