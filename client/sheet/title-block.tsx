// The title block: what the part is, what it is cut from, and its figures, each with its unit.
import type { ComponentChildren } from 'preact';
import { useBench } from '../state/bench-context.js';
import { SaveWords } from '../rail/save-words.js';
import { Downloads } from './downloads.js';

function Cell(props: {
  readonly name: string;
  readonly label: string;
  readonly children: ComponentChildren;
  readonly aside?: ComponentChildren;
}) {
  return (
    <div class={`cell cell-${props.name}`}>
      <dt>{props.label}</dt>
      <dd>
        {props.children}
        {props.aside !== undefined && <span class="small">{props.aside}</span>}
      </dd>
    </div>
  );
}

function PartName() {
  const bench = useBench();
  const row = bench.row.value;
  return (
    <input
      class="part-name"
      id="part-name"
      aria-label="Part name"
      value={row?.name ?? ''}
      maxLength={200}
      autocomplete="off"
      onInput={(event) => bench.rename(event.currentTarget.value)}
      onBlur={(event) => {
        bench.edits.endVisit();
        event.currentTarget.value = bench.row.value?.name ?? '';
      }}
    />
  );
}

function Quantity() {
  const bench = useBench();
  const row = bench.row.value;
  return (
    <input
      class="quantity"
      type="number"
      min={1}
      max={10_000}
      aria-label="Quantity"
      value={row?.quantity ?? 1}
      onInput={(event) => bench.setQuantity(event.currentTarget.valueAsNumber)}
      onBlur={(event) => {
        bench.edits.endVisit();
        event.currentTarget.value = String(bench.row.value?.quantity ?? 1);
      }}
    />
  );
}

export function TitleBlock() {
  const bench = useBench();
  const title = bench.print.title.value;
  const { rows, name, unit } = bench.edits.job.value;
  const sheet = rows.findIndex(({ id }) => id === bench.row.value?.id) + 1;
  return (
    <section class="title-block" aria-label="Title block">
      <dl>
        <Cell
          name="part"
          label="Part"
          aside={
            <>
              {name}, sheet {sheet} of {rows.length}, dimensions in {unit}
              <span class="save-aside">
                , <SaveWords />
              </span>
            </>
          }
        >
          <PartName />
        </Cell>
        <Cell name="plate" label="Plate">
          {title?.thickness} {title?.material}
        </Cell>
        <Cell name="quantity" label="Quantity">
          <Quantity />
        </Cell>
        <Cell name="mass" label="Mass">
          {title?.mass}
        </Cell>
        <Cell name="cut" label="Cut length">
          {title?.cutLength}
        </Cell>
        <Cell name="pierces" label="Pierces, marks">
          {title?.pierces}, {title?.marks}
        </Cell>
        <Cell name="time" label="Torch time" aside="travel not included">
          {title?.time}
        </Cell>
      </dl>
      <Downloads />
    </section>
  );
}
