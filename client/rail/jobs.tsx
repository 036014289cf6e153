// The jobs of this bench: opening another one, or beginning a new one.
import { useSignal } from '@preact/signals';
import { listJobs, makeJob, type JobHead } from '../state/api.js';
import { writeRoute } from '../state/route.js';
import { useBench } from '../state/bench-context.js';

/** Another job is another page load, so that nothing of this one is carried over. */
function openJob(id: string): void {
  window.location.hash = writeRoute(id, undefined);
}

export function Jobs({ close }: { readonly close: () => void }) {
  const bench = useBench();
  const jobs = useSignal<readonly JobHead[] | undefined>(undefined);
  const says = useSignal('');
  if (jobs.value === undefined) {
    jobs.value = [];
    void listJobs().then((heads) => {
      jobs.value = heads ?? [];
      if (heads === undefined) says.value = 'The server is away.';
    });
  }
  const begin = async (): Promise<void> => {
    await bench.saver.flush();
    const made = await makeJob('New job');
    if (made.kind === 'job') openJob(made.job.id);
    else says.value = 'No job could be made: the server is away.';
  };
  const current = bench.edits.job.value.id;
  return (
    <div class="choices">
      {jobs.value
        .filter(({ id }) => id !== current)
        .map(({ id, name }) => (
          <button
            key={id}
            type="button"
            onClick={() => {
              close();
              void bench.saver.flush().then(() => openJob(id));
            }}
          >
            {name}
          </button>
        ))}
      <button type="button" onClick={() => void begin()}>
        Begin an empty job
      </button>
      <p class="small" role="status">
        {says.value}
      </p>
    </div>
  );
}
