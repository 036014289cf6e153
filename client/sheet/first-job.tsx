// A store without jobs says what to do next.
export function FirstJob(props: {
  readonly says: string;
  readonly demo: () => void;
  readonly begin: () => void;
}) {
  return (
    <main class="first-job">
      <h1>{props.says}</h1>
      <p>
        Measured parts in, flat plate parts out. Open the demo job to look around, or begin one of your own.
      </p>
      <p class="choices">
        <button type="button" class="strong" onClick={props.demo}>
          Open the demo job
        </button>
        <button type="button" onClick={props.begin}>
          Begin an empty job
        </button>
      </p>
    </main>
  );
}
