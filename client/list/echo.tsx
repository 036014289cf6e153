// What was understood of an entry, in both units; for a measured pattern also the circle that it gives.

/** The second unit without the way of measuring, where the first has just named it: `2.198 in`, not `adjacent 2.198 in`. */
function withoutWay(text: string, first: string): string {
  const [way = ''] = first.split(' ');
  return /^[a-z]/.test(way) && text.startsWith(`${way} `) ? text.slice(way.length + 1) : text;
}

export function Echo({ lines }: { readonly lines: readonly string[] }) {
  const [metric, inch, gives, givesInch] = lines;
  if (metric === undefined) return null;
  return (
    <>
      <span>
        {metric}
        {inch !== undefined && ` = ${withoutWay(inch, metric)}`}
      </span>
      {gives !== undefined && (
        <span class="gives">
          gives {gives} = {withoutWay(givesInch ?? '', gives)}
        </span>
      )}
    </>
  );
}
