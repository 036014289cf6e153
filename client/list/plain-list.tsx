// The plain list: every field of the family in its groups, those that do not apply folded away.
import type { Field } from '../../parts-library/parts/index.js';
import { useBench } from '../state/bench-context.js';
import { writeDriveRoute } from '../state/route.js';
import { CutGroup } from './cut-group.js';
import { FieldRow } from './field-row.js';
import { KitGroup } from './kit-group.js';

/** Fields under the heading they name, in the family's order. */
function groupFields(fields: readonly Field[]): ReadonlyMap<string, readonly Field[]> {
  const groups = new Map<string, readonly Field[]>();
  for (const field of fields) groups.set(field.group, [...(groups.get(field.group) ?? []), field]);
  return groups;
}

/** Switches a group of fields that may be left out as a whole. */
function GroupSwitch({ field }: { readonly field: Field }) {
  const bench = useBench();
  const given = bench.givenGroups.value.includes(field.path);
  return (
    <p class="group-switch">
      <button type="button" onClick={() => bench.setGroup(field.path, !given)}>
        {given ? 'Leave it out' : `Add a ${field.title.toLowerCase()}`}
      </button>
      {!given && <span class="small">{field.help}</span>}
    </p>
  );
}

function Group({ title, fields }: { readonly title: string; readonly fields: readonly Field[] }) {
  const now = useBench().applying.value;
  const switches = fields.filter((field) => field.kind === 'group');
  const plain = fields.filter((field) => field.kind !== 'group');
  const applying = plain.filter((field) => now.includes(field));
  const folded = plain.filter((field) => !now.includes(field));
  return (
    <section class="group">
      <h3>{title}</h3>
      {switches.map((field) => (
        <GroupSwitch key={field.path} field={field} />
      ))}
      {applying.map((field) => (
        <FieldRow key={field.path} path={field.path} />
      ))}
      {fields.some(({ kind }) => kind === 'chain') && <DriveLink />}
      {folded.length > 0 && applying.length > 0 && (
        <details class="folded">
          <summary>
            {folded.length} more that {folded.length === 1 ? 'does' : 'do'} not apply now
          </summary>
          {folded.map((field) => (
            <FieldRow key={field.path} path={field.path} />
          ))}
        </details>
      )}
    </section>
  );
}

/** A part that a chain runs over belongs to a drive. */
function DriveLink() {
  const { edits, row } = useBench();
  return (
    <p class="drive-link">
      <a href={writeDriveRoute(edits.job.value.id, row.value?.id)}>Drive numbers</a>
      <span class="small">chain, speed, other sprockets, the hill</span>
    </p>
  );
}

/** What follows from all of it together. */
function Follows() {
  const { derived } = useBench().print;
  const loose = derived.value.filter(({ field }) => field === undefined);
  if (loose.length === 0) return null;
  return (
    <section class="group">
      <h3>Gives</h3>
      <dl class="follows">
        {loose.map(({ id, title, text }) => (
          <div key={id}>
            <dt>{title}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

export function PlainList() {
  const bench = useBench();
  return (
    <section class="measured" aria-labelledby="measured-heading">
      <h2 id="measured-heading">Measured</h2>
      <KitGroup />
      {[...groupFields(bench.family.value?.fields ?? [])].map(([title, fields]) => (
        <Group key={title} title={title} fields={fields} />
      ))}
      <Follows />
      <CutGroup />
    </section>
  );
}
