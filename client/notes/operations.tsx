// Below the notes: the operation sequence of the part, and what is bought or sawn to go with it.
import type { HardwareItem, ShopStep } from '../../parts-library/model/index.js';
import { useBench } from '../state/bench-context.js';

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

export function Operations() {
  const { operations, hardware } = useBench().print;
  const steps = operations.value;
  const items = hardware.value;
  if (steps.length === 0) return null;
  return (
    <section class="operations" aria-labelledby="operations-heading">
      <h2 id="operations-heading">From print to part</h2>
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
