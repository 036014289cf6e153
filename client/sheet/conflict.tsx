// Two people changed the job: what differs, side by side, and the choice, in place above the print.
import type { Job } from '../../parts-library/job/index.js';
import { loadKits } from '../../parts-library/kits/index.js';
import { loadFamilies } from '../../parts-library/parts/index.js';
import type { Bench } from '../state/bench.js';
import { differences } from './differences.js';
import { useBench } from '../state/bench-context.js';

/** Goes on with the stored job; its parts may be of families that this page has not met. */
async function take(bench: Bench, theirs: Job, tag: string): Promise<void> {
  await Promise.all([
    loadFamilies(theirs.rows.map(({ family }) => family)),
    loadKits(theirs.kits.map(({ kit }) => kit)),
  ]);
  bench.entries.dropAll();
  bench.edits.replace(theirs);
  bench.saver.tookTheirs(theirs, tag);
}

export function Conflict() {
  const bench = useBench();
  const state = bench.saver.state.value;
  if (state.kind !== 'conflict') return null;
  const rows = differences(bench.edits.job.value, state.theirs);
  return (
    <section class="conflict" aria-labelledby="conflict-heading">
      <h2 id="conflict-heading">This job was changed elsewhere since you opened it</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Here</th>
            <th scope="col">Stored</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.what}>
              <th scope="row">{row.what}</th>
              <td>{row.mine}</td>
              <td>{row.theirs}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="choices">
        <button type="button" class="strong" onClick={() => void bench.saver.keepMine()}>
          Keep what is here
        </button>
        <button type="button" onClick={() => void take(bench, state.theirs, state.tag)}>
          Take what is stored
        </button>
      </p>
    </section>
  );
}
