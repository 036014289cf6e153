// The tables of a drive: chains by their sizes, lengths of chain, other sprockets. A row can be taken.
import type { ComponentChildren } from 'preact';
import {
  createWords,
  shareText,
  type DriveNumbers,
  type ToothChange,
} from '../../parts-library/drive/index.js';
import type { Format, Json } from '../../parts-library/model/index.js';
import { writeDecimal } from '../../parts-library/units/index.js';

export interface TableProps {
  readonly numbers: DriveNumbers;
  readonly format: Format;
  readonly take: (values: Readonly<Record<string, Json>>, says: string) => void;
}

function Table(props: {
  readonly title: string;
  readonly aside?: string;
  readonly heads: readonly string[];
  readonly children: ComponentChildren;
}) {
  const { title, aside, heads, children } = props;
  return (
    <section class="group drive-table">
      <h3>{title}</h3>
      {aside !== undefined && <p class="small">{aside}</p>}
      <div class="table-room">
        <table>
          <thead>
            <tr>
              {heads.map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
              <th scope="col">
                <span class="heard-only">Take it</span>
              </th>
            </tr>
          </thead>
          <tbody>{children}</tbody>
        </table>
      </div>
    </section>
  );
}

/** The last cell of a row: its button, or a word where it is taken already. */
function Take(props: { readonly taken: boolean; readonly label: string; readonly onTake: () => void }) {
  return (
    <td class="take">
      {props.taken ? (
        <span class="small">as it is</span>
      ) : (
        <button type="button" class="quiet" aria-label={props.label} onClick={props.onTake}>
          Take
        </button>
      )}
    </td>
  );
}

export function Candidates({ numbers, format, take }: TableProps) {
  const { candidates, chain } = numbers;
  if (candidates.length === 0) return null;
  const signed = (mm: number | undefined): string =>
    mm === undefined ? '' : ` (${mm < 0 ? '−' : '+'}${format.bare(Math.abs(mm))})`;
  return (
    <Table
      title="Chains by what was measured"
      aside="Likeliest first; in brackets how far the reading is off."
      heads={['Chain', 'Pitch', 'Roller', 'Width', 'Longer', '']}
    >
      {candidates.map((one) => (
        <tr key={one.name} class={one.fits ? '' : 'no-fit'}>
          <th scope="row">{one.name}</th>
          <td>{format.bare(one.pitch)}</td>
          <td>
            {format.bare(one.roller)}
            {signed(one.offRoller)}
          </td>
          <td>
            {format.bare(one.innerWidth)}
            {signed(one.offWidth)}
          </td>
          <td>{one.wearPercent === undefined ? '' : `${writeDecimal(one.wearPercent, 2)} %`}</td>
          <td>{one.fits ? 'fits' : 'does not fit'}</td>
          <Take
            taken={chain?.name === one.name && chain.from === 'name'}
            label={`Take chain ${one.name}`}
            onTake={() => take({ chain: one.name }, `Take chain ${one.name}`)}
          />
        </tr>
      ))}
    </Table>
  );
}

export function Lengths({ numbers, format, take }: TableProps) {
  const { linkChoices, picture } = numbers;
  if (linkChoices.length === 0) return null;
  return (
    <Table title="Lengths of chain" heads={['Links', 'Centres', 'Centres move', '']}>
      {linkChoices.map(({ links, centres, moves }) => (
        <tr key={links}>
          <th scope="row">{links}</th>
          <td>{format.length(centres)}</td>
          <td>{moves === undefined ? '' : `${moves < 0 ? '−' : '+'}${format.length(Math.abs(moves))}`}</td>
          <td>{links % 2 === 0 ? '' : 'offset link'}</td>
          <Take
            taken={picture?.links === links}
            label={`Take ${links} links`}
            onTake={() => take({ links }, `Take ${links} links`)}
          />
        </tr>
      ))}
    </Table>
  );
}

const climbWords = (climbs: boolean | undefined): string =>
  climbs === undefined ? '' : climbs ? 'climbs' : 'does not climb';

/** Speed as a share of what it is now, with its sign. */
const speedWords = ({ speed }: ToothChange): string =>
  Math.abs(speed - 1) < 1e-9 ? '' : `${speed < 1 ? '−' : '+'}${shareText(Math.abs(speed - 1))}`;

export function Changes({ numbers, format, take }: TableProps) {
  const { force, bare, roadSpeed } = createWords(format);
  const { changes } = numbers;
  const [now] = changes;
  if (now === undefined) return null;
  const columns = [
    { head: 'Ratio', cell: (one: ToothChange) => writeDecimal(one.chainRatio, 2) },
    {
      head: 'Speed',
      cell: (one: ToothChange) =>
        `${one.roadSpeed === undefined ? '' : roadSpeed(one.roadSpeed)} ${speedWords(one)}`.trim(),
    },
    {
      head: 'Pull',
      cell: (one: ToothChange) => (one.groundNewtons === undefined ? '' : force(one.groundNewtons)),
    },
    {
      head: `Same chain, centres ${format.unit}`,
      cell: (one: ToothChange) => (one.sameLinks === undefined ? '' : bare(one.sameLinks.centres)),
    },
    {
      head: 'Same centres, links',
      cell: (one: ToothChange) =>
        one.sameCentres === undefined ? '' : `${one.sameCentres.links} at ${bare(one.sameCentres.centres)}`,
    },
    { head: 'Hill', cell: (one: ToothChange) => climbWords(one.climbs) },
    // What nothing is known for is left out.
  ].filter(({ cell }) => changes.some((one) => cell(one) !== ''));
  return (
    <Table title="Other sprockets" heads={['Motor', 'Wheel', ...columns.map(({ head }) => head)]}>
      {changes.map((one) => {
        const { motorTeeth, wheelTeeth } = one;
        const words = `Take ${motorTeeth} and ${wheelTeeth} teeth`;
        return (
          <tr
            key={`${motorTeeth}/${wheelTeeth}`}
            class={one === now ? 'now' : one.climbs === false ? 'no-fit' : ''}
          >
            <th scope="row">{motorTeeth}</th>
            <td>{wheelTeeth}</td>
            {columns.map(({ head, cell }) => (
              <td key={head}>{cell(one)}</td>
            ))}
            <Take taken={one === now} label={words} onTake={() => take({ motorTeeth, wheelTeeth }, words)} />
          </tr>
        );
      })}
    </Table>
  );
}
