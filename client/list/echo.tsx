// What was understood of an entry, in both units, and what follows from it.

/** The second unit without the way of measuring, where the first has just named it: `2.198 in`, not `adjacent 2.198 in`. */
function withoutWay(text: string, first: string): string {
  const [way = ''] = first.split(' ');
  return /^[a-z]/.test(way) && text.startsWith(`${way} `) ? text.slice(way.length + 1) : text;
}

export function Echo(props: { readonly lines: readonly string[]; readonly gives?: readonly string[] }) {
  const { lines, gives = [] } = props;
  const [metric, inch] = lines;
  return (
    <>
      {metric !== undefined && (
        <span>
          {metric}
          {inch !== undefined && ` = ${withoutWay(inch, metric)}`}
        </span>
      )}
      {gives.map((line) => (
        <span key={line} class="gives">
          {line}
        </span>
      ))}
    </>
  );
}
