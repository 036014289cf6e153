// Below the notes: the operation sequence of the part, and what is bought or sawn to go with it.
import type { HardwareItem, ShopStep } from '../../parts-library/model/index.js';
import { useSignal } from '@preact/signals';
import { useBench } from '../state/bench-context.js';
import { takeTemplate } from '../state/files.js';

function Step({ kind, says }: ShopStep) {
  return (
    <li class={kind === 'caution' ? 'step caution' : 'step'}>
      <span class="step-kind">{kind}</span> {says}
    </li>
  );
}

function Item({ item }: { readonly item: HardwareItem }) {
  const { format } = useBench().print;
  const { name, quantity, length, says } = item;
  return (
    <li>
      {quantity} × {name}
      {length !== undefined && `, sawn ${format.value.length(length)}`}
      {says !== undefined && <p class="small">{says}</p>}
    </li>
  );
}

const PAPERS = [
  ['a4', 'A4'],
  ['letter', 'Letter'],
] as const;

/** The paper template comes from the server, which has the writer; it holds no cut path, so no stop withholds it. */
function Template() {
  const bench = useBench();
  const says = useSignal('');
  const row = bench.row.value;
  if (row === undefined) return null;
  const take = async (paper: 'a4' | 'letter'): Promise<void> => {
    says.value = (await takeTemplate(row, bench.edits.job.peek().unit, paper)).says;
  };
  return (
    <p class="template" role="group" aria-label="Paper template">
      Paper template at true size, to try on the real parts:{' '}
      {PAPERS.map(([paper, title]) => (
        <button
          key={paper}
          type="button"
          aria-label={`Paper template, ${title}`}
          onClick={() => void take(paper)}
        >
          {title}
        </button>
      ))}
      <span role="status">{says.value}</span>
    </p>
  );
}

export function Operations() {
  const { operations, hardware } = useBench().print;
  const steps = operations.value;
  const items = hardware.value;
  if (steps.length === 0) return null;
  return (
    <section class="operations" aria-labelledby="operations-heading">
      <h2 id="operations-heading">From print to part</h2>
      <Template />
      <details>
        <summary>{steps.length} operations, in order</summary>
        <ol>
          {steps.map((step) => (
            <Step key={`${step.kind} ${step.says}`} {...step} />
          ))}
        </ol>
      </details>
      {items.length > 0 && (
        <details>
          <summary>Hardware and saw list, {items.length === 1 ? '1 line' : `${items.length} lines`}</summary>
          <ul>
            {items.map((item) => (
              <Item key={item.id} item={item} />
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
