// Whether the job is saved, in words, where a person looks for it.
import { useBench } from '../state/bench-context.js';

const WORDS = {
  saved: 'saved',
  waiting: 'not saved yet',
  saving: 'saving',
  away: 'not saved: the server is away. Work goes on here and is saved when it is back',
  conflict: 'not saved: somebody else changed this job',
} as const;

export function SaveWords() {
  const state = useBench().saver.state.value;
  return (
    <span class={`save-words save-${state.kind}`}>
      {state.kind === 'refused' ? `not saved: ${state.says}` : WORDS[state.kind]}
    </span>
  );
}
