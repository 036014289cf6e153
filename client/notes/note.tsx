// One finding as a numbered note: what, how much, the limit, the formula with its numbers, the source, and what mends it.
import type { Finding, Level } from '../../parts-library/model/index.js';
import { useBench } from '../state/bench-context.js';
import { LEVEL_WORDS, LevelMark } from './level-mark.js';
import { writeQuantity } from './quantity.js';

function Numbers({ finding }: { readonly finding: Finding }) {
  const { format } = useBench().print;
  const { value, limit } = finding;
  if (value === undefined && limit === undefined) return null;
  return (
    <p class="numbers">
      {value !== undefined && <span>Is {writeQuantity(value, format.value)}</span>}
      {limit !== undefined && <span>Limit {writeQuantity(limit, format.value)}</span>}
    </p>
  );
}

/** The figure with the note's number; it leads to the field that a person would change. */
function Mark(props: {
  readonly finding: Finding;
  readonly level: Exclude<Level, 'pass'>;
  readonly number: number;
}) {
  const bench = useBench();
  const { finding, level, number } = props;
  const path = finding.field;
  const name = bench.nameOf(path);
  if (path === undefined || name === undefined) return <LevelMark level={level} number={number} />;
  const words = `Note ${number}: go to ${name}`;
  return (
    <button type="button" class="mark" aria-label={words} title={words} onClick={() => bench.goTo(path)}>
      <LevelMark level={level} number={number} />
    </button>
  );
}

/** Phones fold a note to its title; wider windows show it whole. */
const isWide = (): boolean => window.matchMedia('(min-width: 641px)').matches;

export function Note(props: {
  readonly finding: Finding;
  readonly level: Exclude<Level, 'pass'>;
  readonly number: number;
}) {
  const bench = useBench();
  const { finding, level, number } = props;
  return (
    <li class={`note level-${level}`} id={`note-${number}`}>
      <Mark {...props} />
      <details open={isWide()}>
        <summary>
          <h3>
            <span class="level-word">{LEVEL_WORDS[level]}</span> {finding.title}
          </h3>
        </summary>
        {finding.says !== finding.title && <p>{finding.says}</p>}
        <Numbers finding={finding} />
        {finding.formula !== undefined && <p class="formula">{finding.formula}</p>}
        <p class="source">
          {finding.source.title}, {finding.source.where} ({finding.source.certainty})
        </p>
      </details>
      {finding.remedies !== undefined && (
        <p class="remedies">
          {finding.remedies.map((remedy) => (
            <button key={remedy.says} type="button" onClick={() => bench.mend(remedy)}>
              {remedy.says}
            </button>
          ))}
        </p>
      )}
    </li>
  );
}
