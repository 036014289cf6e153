// The sheet of drive numbers: picture and numbers, notes and entries beside them, the main numbers at the foot.
import { useEffect, useMemo } from 'preact/hooks';
import { Notes } from '../notes/notes.js';
import { BenchContext, useBench } from '../state/bench-context.js';
import '../styles/drive.css';
import { createDriveBench } from './drive-bench.js';
import { DriveList } from './drive-list.js';
import { DriveTitle } from './drive-title.js';
import { Figures } from './figures.js';
import { Picture } from './picture.js';
import { Candidates, Changes, Lengths } from './tables.js';

/** Tyre radii as they were read, for the picture. */
function tyreOf(free: number | undefined, loaded: number | undefined) {
  const radius = free === undefined ? loaded : free / 2;
  return radius === undefined ? undefined : { free: radius, loaded: loaded ?? radius };
}

/** Millimetres of a length field as it was understood. */
function useLength(path: string): number | undefined {
  const value = useBench().viewOf(path).value?.value;
  return typeof value === 'object' && value !== null && 'mm' in value && typeof value['mm'] === 'number'
    ? value['mm']
    : undefined;
}

function Numbers({ drive }: { readonly drive: ReturnType<typeof createDriveBench> }) {
  const numbers = drive.numbers.value;
  const format = useBench().print.format.value;
  const says = drive.brokenSays.value;
  const tyre = tyreOf(useLength('tyreDiameter'), useLength('loadedRadius'));
  const table = { numbers, format, take: drive.take };
  return (
    <section class={`drive-main${says === undefined ? '' : ' broken'}`} aria-label="Drive numbers">
      <p class={`state-strip${says === undefined ? '' : ' broken'}`} role="status">
        {says}
      </p>
      <Picture numbers={numbers} tyre={tyre} format={format} />
      <div class="drive-tables">
        <Figures figures={numbers.figures} />
        <Changes {...table} />
        <Lengths {...table} />
        <Candidates {...table} />
      </div>
    </section>
  );
}

export function DriveSheet() {
  const bench = useBench();
  const drive = useMemo(() => createDriveBench(bench), [bench]);
  useEffect(() => drive.stop, [drive]);
  return (
    <BenchContext.Provider value={drive.bench}>
      <div class="frame drive">
        <Numbers drive={drive} />
        <DriveTitle numbers={drive.numbers.value} />
        <div class="column">
          <Notes />
          <DriveList />
        </div>
      </div>
    </BenchContext.Provider>
  );
}
