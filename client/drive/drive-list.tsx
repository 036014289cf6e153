// What can be said of the drive, as a plain list in its groups; fields that do not apply now are left out.
import { driveReader } from '../../parts-library/drive/index.js';
import { FieldRow } from '../list/field-row.js';
import { useBench } from '../state/bench-context.js';

export function DriveList() {
  const now = useBench().applying.value;
  const groups = [...new Set(driveReader.fields.map(({ group }) => group))];
  return (
    <section class="measured" aria-labelledby="measured-heading">
      <h2 id="measured-heading">Measured</h2>
      {groups.map((group) => (
        <section key={group} class="group">
          <h3>{group}</h3>
          {now
            .filter((field) => field.group === group)
            .map(({ path }) => (
              <FieldRow key={path} path={path} />
            ))}
        </section>
      ))}
    </section>
  );
}
