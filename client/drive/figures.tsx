// The numbers of a drive under their headings; each opens to its formula with its numbers in it, and its source.
import type { Figure, FigureGroup } from '../../parts-library/drive/index.js';

function Number({ figure }: { readonly figure: Figure }) {
  const { title, text, formula, source } = figure;
  return (
    <details class="figure">
      <summary>
        <span>{title}</span> <strong>{text}</strong>
      </summary>
      <p class="formula">{formula}</p>
      <p class="source">
        {source.title}, {source.where} ({source.certainty})
      </p>
    </details>
  );
}

const GROUPS: readonly FigureGroup[] = ['Speed', 'Pull', 'Chain line', 'Hill'];

export function Figures({ figures }: { readonly figures: readonly Figure[] }) {
  return (
    <div class="figures">
      {GROUPS.map((group) => {
        const own = figures.filter((figure) => figure.group === group);
        return own.length === 0 ? null : (
          <section key={group} class="group">
            <h3>{group}</h3>
            {own.map((figure) => (
              <Number key={figure.id} figure={figure} />
            ))}
          </section>
        );
      })}
    </div>
  );
}
