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

export function Note(props: {
  readonly finding: Finding;
  readonly level: Exclude<Level, 'pass'>;
  readonly number: number;
}) {
  const bench = useBench();
  const { finding, level, number } = props;
  const field = bench.fieldOf(finding.field);
  return (
    <li class={`note level-${level}`} id={`note-${number}`}>
      <LevelMark level={level} number={number} />
      <div>
        <h3>
          <span class="level-word">{LEVEL_WORDS[level]}</span> {finding.title}
        </h3>
        {finding.says !== finding.title && <p>{finding.says}</p>}
        <Numbers finding={finding} />
        {finding.formula !== undefined && <p class="formula">{finding.formula}</p>}
        <p class="source">
          {finding.source.title}, {finding.source.where} ({finding.source.certainty})
        </p>
        {(finding.remedies !== undefined || field !== undefined) && (
          <p class="remedies">
            {finding.remedies?.map((remedy) => (
              <button key={remedy.says} type="button" onClick={() => bench.mend(remedy)}>
                {remedy.says}
              </button>
            ))}
            {field !== undefined && (
              <button type="button" class="quiet" onClick={() => bench.goTo(field.path)}>
                Go to {field.title.toLowerCase()}
              </button>
            )}
          </p>
        )}
      </div>
    </li>
  );
}
