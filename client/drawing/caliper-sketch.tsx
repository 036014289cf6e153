// Small sketches of where to put the caliper, one for each way of measuring. Not to scale, and they say so.
import type { ComponentChild } from 'preact';
import type { Field } from '../../parts-library/parts/index.js';
import type { Json } from '../../parts-library/model/index.js';
import { isObject } from '../state/values.js';
import { Caliper } from './caliper.js';

const Hole = ({ x, y, r = 11 }: { readonly x: number; readonly y: number; readonly r?: number }) => (
  <>
    <circle class="edge" cx={x} cy={y} r={r} />
    <path class="centre" d={`M${x - 5} ${y}H${x + 5}M${x} ${y - 5}V${y + 5}`} />
  </>
);

/** Three neighbouring holes on their circle, the middle one on top. */
const ArcOfHoles = () => (
  <>
    <path class="circle" d="M17.8 108A57.3 57.3 0 0 1 130.2 108" />
    <Hole x={26} y={88} />
    <Hole x={74} y={62} />
    <Hole x={122} y={88} />
  </>
);

const WholePattern = () => (
  <>
    <circle class="circle" cx={70} cy={62} r={40} />
    <Hole x={30} y={62} r={8} />
    <Hole x={110} y={62} r={8} />
    <Hole x={50} y={27.4} r={8} />
    <Hole x={90} y={27.4} r={8} />
    <Hole x={50} y={96.6} r={8} />
    <Hole x={90} y={96.6} r={8} />
  </>
);

const SKETCHES = {
  circle: () => (
    <>
      <WholePattern />
      <path class="measured" d="M30 62H110" />
    </>
  ),
  adjacent: () => (
    <>
      <ArcOfHoles />
      <Caliper from={{ x: 26, y: 88 }} to={{ x: 74, y: 62 }} jaws="points" reach={34} />
    </>
  ),
  steps: () => (
    <>
      <ArcOfHoles />
      <Caliper from={{ x: 26, y: 88 }} to={{ x: 122, y: 88 }} jaws="points" reach={62} />
    </>
  ),
  near: () => (
    <>
      <ArcOfHoles />
      <Caliper from={{ x: 35.67, y: 82.76 }} to={{ x: 64.33, y: 67.24 }} jaws="outside" reach={38} />
    </>
  ),
  far: () => (
    <>
      <ArcOfHoles />
      <Caliper from={{ x: 16.33, y: 93.24 }} to={{ x: 83.67, y: 56.76 }} jaws="inside" reach={36} />
    </>
  ),
  across: () => (
    <>
      <WholePattern />
      <Caliper from={{ x: 30, y: 62 }} to={{ x: 110, y: 62 }} jaws="points" reach={48} />
    </>
  ),
  'from-bore': () => (
    <>
      <path class="edge" d="M4 34A44 44 0 0 1 4 96" />
      <Hole x={84} y={65} r={11} />
      <path class="circle" d="M78 14A90 90 0 0 1 78 112" />
      <Caliper from={{ x: 16.5, y: 65 }} to={{ x: 73, y: 65 }} jaws="outside" reach={34} />
    </>
  ),
  centres: () => (
    <>
      <path class="axis" d="M14 100H130M14 100V12" />
      <Hole x={36} y={74} r={7} />
      <Hole x={72} y={32} r={7} />
      <Hole x={110} y={66} r={7} />
      <path class="measured" d="M14 74H36M36 100V74" />
      <path class="measured" d="M14 66H110M110 100V66" />
    </>
  ),
  'over-outside': () => (
    <>
      <circle class="edge filled" cx={66} cy={70} r={30} />
      <circle class="edge hollow" cx={66} cy={70} r={12} />
      <Caliper from={{ x: 36, y: 70 }} to={{ x: 96, y: 70 }} jaws="outside" reach={44} />
    </>
  ),
  inside: () => (
    <>
      <circle class="edge filled" cx={66} cy={68} r={38} />
      <circle class="edge hollow" cx={66} cy={68} r={24} />
      <Caliper from={{ x: 42, y: 68 }} to={{ x: 90, y: 68 }} jaws="inside" reach={48} />
    </>
  ),
  thickness: () => (
    <>
      <rect class="edge filled" x={58} y={58} width={18} height={50} />
      <Caliper from={{ x: 58, y: 72 }} to={{ x: 76, y: 72 }} jaws="outside" reach={40} />
    </>
  ),
  'over-thread': () => (
    <>
      <path class="edge filled" d="M50 52h32v56H50z" />
      <path class="edge" d="M50 60l32 4M50 68l32 4M50 76l32 4M50 84l32 4M50 92l32 4M50 100l32 4" />
      <Caliper from={{ x: 50, y: 78 }} to={{ x: 82, y: 78 }} jaws="outside" reach={48} />
    </>
  ),
} satisfies Readonly<Record<string, () => ComponentChild>>;

export type SketchName = keyof typeof SKETCHES;

/** How parameters of these names are measured, in whatever family they occur. */
const BY_NAME: Readonly<Record<string, SketchName>> = {
  hub: 'over-outside',
  outside: 'over-outside',
  tyreDiameter: 'over-outside',
  bore: 'inside',
  boltedBore: 'inside',
  boltedHole: 'inside',
  thickness: 'thickness',
  bolt: 'over-thread',
};

function sketchOfMeasure(value: Json | undefined): SketchName | undefined {
  const measure = isObject(value) ? value['measure'] : undefined;
  const readings = isObject(measure) ? measure['readings'] : undefined;
  const first: Json | undefined = Array.isArray(readings) ? (readings as readonly Json[])[0] : undefined;
  if (!isObject(first)) return undefined;
  const { way, side, step } = first;
  if (way === 'steps') return step === 1 ? 'adjacent' : 'steps';
  if (way === 'edges') return side === 'far' ? 'far' : 'near';
  return way === 'circle' || way === 'across' || way === 'from-bore' || way === 'centres' ? way : undefined;
}

/** What each sketch shows, in a sentence. */
export const SKETCH_WORDS: Readonly<Record<SketchName, string>> = {
  circle: 'The circle itself, where it is known.',
  adjacent: 'Adjacent holes, centre to centre: near edge to near edge plus one hole.',
  steps: 'Centre to centre over the hole between: near edge to near edge plus one hole.',
  near: 'A jaw in each of two holes, closed on the metal between them.',
  far: 'A jaw in each of two holes, opened to their far edges.',
  across: 'Opposite holes, centre to centre: near edge to near edge plus one hole.',
  'from-bore': 'One jaw in the bore, one in a hole, closed on the metal between.',
  centres: 'Each centre from the same two edges.',
  'over-outside': 'Jaws over the outside.',
  inside: 'Jaws inside, opened against the wall.',
  thickness: 'Jaws over both faces.',
  'over-thread': 'Jaws over the threads.',
};

/** Which sketch shows how a field is measured; undefined when words are enough. */
export function sketchOf(field: Field, value: Json | undefined): SketchName | undefined {
  if (field.kind === 'measure') return sketchOfMeasure(value);
  return BY_NAME[field.path.slice(field.path.lastIndexOf('.') + 1)];
}

/** The sketch itself; its meaning is in the words beside it. */
export function CaliperSketch({ name }: { readonly name: SketchName }) {
  const Sketch = SKETCHES[name];
  return (
    <figure class="sketch">
      <svg viewBox="0 0 140 112" width="124" height="99" aria-hidden="true">
        <Sketch />
      </svg>
      <figcaption>not to scale</figcaption>
    </figure>
  );
}
