// Small sketches of where to put the caliper, one for each way of measuring. Not to scale, and they say so.
import type { ComponentChild } from 'preact';
import type { Field } from '../../parts-library/parts/index.js';
import type { Json } from '../../parts-library/model/index.js';
import { isObject } from '../state/values.js';
import { Caliper } from './caliper.js';

const Hole = ({ x, y, r = 9 }: { readonly x: number; readonly y: number; readonly r?: number }) => (
  <>
    <circle class="edge" cx={x} cy={y} r={r} />
    <path class="centre" d={`M${x - 4} ${y}H${x + 4}M${x} ${y - 4}V${y + 4}`} />
  </>
);

/** Three neighbouring holes on their circle, the middle one on top. */
const ArcOfHoles = () => (
  <>
    <path class="circle" d="M12 92A62 62 0 0 1 128 92" />
    <Hole x={22} y={70} />
    <Hole x={70} y={46} />
    <Hole x={118} y={70} />
  </>
);

const WholePattern = () => (
  <>
    <circle class="circle" cx={70} cy={60} r={34} />
    <Hole x={36} y={60} r={7} />
    <Hole x={104} y={60} r={7} />
    <Hole x={53} y={31} r={7} />
    <Hole x={87} y={31} r={7} />
    <Hole x={53} y={89} r={7} />
    <Hole x={87} y={89} r={7} />
  </>
);

const SKETCHES = {
  circle: () => (
    <>
      <WholePattern />
      <path class="measured" d="M36 60H104" />
    </>
  ),
  adjacent: () => (
    <>
      <ArcOfHoles />
      <Caliper from={{ x: 22, y: 70 }} to={{ x: 70, y: 46 }} jaws="points" />
    </>
  ),
  steps: () => (
    <>
      <ArcOfHoles />
      <Caliper from={{ x: 22, y: 70 }} to={{ x: 118, y: 70 }} jaws="points" reach={46} />
    </>
  ),
  near: () => (
    <>
      <ArcOfHoles />
      <Caliper from={{ x: 30.05, y: 65.98 }} to={{ x: 61.95, y: 50.02 }} jaws="outside" reach={30} />
    </>
  ),
  far: () => (
    <>
      <ArcOfHoles />
      <Caliper from={{ x: 13.95, y: 74.02 }} to={{ x: 78.05, y: 41.98 }} jaws="inside" reach={30} />
    </>
  ),
  across: () => (
    <>
      <WholePattern />
      <Caliper from={{ x: 36, y: 60 }} to={{ x: 104, y: 60 }} jaws="points" reach={46} />
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
      <svg viewBox="0 0 140 112" width="140" height="112" aria-hidden="true">
        <Sketch />
      </svg>
      <figcaption>not to scale</figcaption>
    </figure>
  );
}
