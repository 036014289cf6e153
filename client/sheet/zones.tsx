// The reference grid in the sheet's margin (ISO 5457): numbers along, letters down, so that a place can be named.
const ACROSS = ['1', '2', '3', '4', '5', '6', '7', '8'];
const DOWN = ['A', 'B', 'C', 'D', 'E', 'F'];

const Strip = ({ side, marks }: { readonly side: string; readonly marks: readonly string[] }) => (
  <div class={`zones ${side}`} aria-hidden="true">
    {marks.map((mark) => (
      <span key={mark}>{mark}</span>
    ))}
  </div>
);

export const Zones = () => (
  <>
    <Strip side="across top" marks={ACROSS} />
    <Strip side="across bottom" marks={ACROSS} />
    <Strip side="down left" marks={DOWN} />
    <Strip side="down right" marks={DOWN} />
  </>
);
