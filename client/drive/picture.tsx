// The drive to scale, seen from the side: both sprockets, the chain roller by roller, tyre and ground as ghosts.
import type { DriveNumbers, DrivePicture } from '../../parts-library/drive/index.js';
import { pitchDiameter } from '../../parts-library/handbook/index.js';
import type { Format } from '../../parts-library/model/index.js';
import { placeRollers, type Spot } from './rollers.js';

/** Room of the picture, CSS pixels at full size. */
const ROOM = { width: 820, height: 348, side: 40, top: 26, bottom: 56 } as const;

interface Tyre {
  readonly free: number;
  readonly loaded: number;
}

interface Scene {
  readonly scale: number;
  readonly motor: Spot;
  readonly wheel: Spot;
}

/** The largest scale at which everything stands in the room. */
function sceneOf({ pitch, motorTeeth, wheelTeeth, centres }: DrivePicture, tyre: Tyre | undefined): Scene {
  const radius = (teeth: number): number => pitchDiameter(pitch, teeth) / 2 + pitch / 2;
  const left = radius(motorTeeth);
  const right = Math.max(radius(wheelTeeth), tyre?.free ?? 0);
  const up = Math.max(left, right);
  const scale = Math.min(
    (ROOM.width - 2 * ROOM.side) / (left + centres + right),
    (ROOM.height - ROOM.top - ROOM.bottom) / (2 * up),
  );
  const y = ROOM.top + up * scale;
  const start = (ROOM.width - (left + centres + right) * scale) / 2 + left * scale;
  return { scale, motor: { x: start, y }, wheel: { x: start + centres * scale, y } };
}

function Sprocket(props: {
  readonly at: Spot;
  readonly radius: number;
  /** Half the roller: the root lies that far inside the pitch circle. */
  readonly roller: number;
  readonly teeth: number;
}) {
  const { at, radius, roller, teeth } = props;
  const arm = radius + 10;
  return (
    <>
      <circle class="plate-edge" cx={at.x} cy={at.y} r={Math.max(radius - roller, 2)} />
      <circle class="pitch-circle" cx={at.x} cy={at.y} r={radius} />
      <path class="centre-line" d={`M${at.x - arm} ${at.y}h${2 * arm}M${at.x} ${at.y - arm}v${2 * arm}`} />
      <text class="teeth" x={at.x} y={at.y - (radius > 44 ? radius / 2 : -5)} text-anchor="middle">
        {radius > 44 ? `${teeth} teeth` : ''}
      </text>
    </>
  );
}

/** A dimension below the picture, with extension lines from both centres. */
function Centres({ scene, y, text }: { readonly scene: Scene; readonly y: number; readonly text: string }) {
  const { motor, wheel } = scene;
  const arrow = (x: number, towards: 1 | -1): string => `M${x} ${y}l${9 * towards} -2.6v5.2z`;
  return (
    <g class="dimension">
      <path
        d={`M${motor.x} ${motor.y + 14}V${y + 5}M${wheel.x} ${wheel.y + 14}V${y + 5}M${motor.x} ${y}H${wheel.x}`}
      />
      <path class="arrow" d={arrow(motor.x, 1) + arrow(wheel.x, -1)} />
      <text x={(motor.x + wheel.x) / 2} y={y - 6} text-anchor="middle">
        {text}
      </text>
    </g>
  );
}

export function Picture(props: {
  readonly numbers: DriveNumbers;
  readonly tyre: Tyre | undefined;
  readonly format: Format;
}) {
  const { numbers, tyre, format } = props;
  const { picture, chain } = numbers;
  if (picture === undefined) {
    return (
      <p class="no-picture">The picture comes with the chain and either its links or the centre distance.</p>
    );
  }
  const { pitch, motorTeeth, wheelTeeth, centres, links } = picture;
  const scene = sceneOf(picture, tyre);
  const { scale, motor, wheel } = scene;
  const motorRadius = (pitchDiameter(pitch, motorTeeth) / 2) * scale;
  const wheelRadius = (pitchDiameter(pitch, wheelTeeth) / 2) * scale;
  const rollers = placeRollers({ motor, wheel, motorRadius, wheelRadius, links, sag: picture.sag * scale });
  const size = Math.max(1.1, pitch * 0.3 * scale);
  const movement = numbers.figures.find(({ id }) => id === 'movement');
  const words = `${chain?.name ?? ''} chain, ${links} links, ${motorTeeth} and ${wheelTeeth} teeth, centres ${format.length(centres)}`;
  const loose = rollers.loose;
  const groundY = tyre === undefined ? 0 : wheel.y + tyre.loaded * scale;
  return (
    <figure class="drive-picture">
      <svg
        viewBox={`0 0 ${ROOM.width} ${ROOM.height}`}
        role="img"
        aria-label={`Side view to scale: ${words}.`}
      >
        {tyre !== undefined && (
          <g class="ghost">
            <circle cx={wheel.x} cy={wheel.y} r={tyre.free * scale} />
            <path class="ground" d={`M${ROOM.side} ${groundY}H${ROOM.width - ROOM.side}`} />
            <text x={ROOM.width - ROOM.side} y={groundY + 15} text-anchor="end">
              ground
            </text>
          </g>
        )}
        <Sprocket at={motor} radius={motorRadius} roller={size} teeth={motorTeeth} />
        <Sprocket at={wheel} radius={wheelRadius} roller={size} teeth={wheelTeeth} />
        <path class="chain-line" d={rollers.path} />
        {rollers.spots.map(({ x, y }, index) => (
          <circle key={index} class="roller" cx={x.toFixed(2)} cy={y.toFixed(2)} r={size.toFixed(2)} />
        ))}
        {motorRadius <= 44 && (
          <text class="teeth" x={motor.x} y={motor.y - motorRadius - 14} text-anchor="middle">
            {motorTeeth} teeth
          </text>
        )}
        {movement !== undefined && (
          <text
            class="loose"
            text-anchor="middle"
            transform={`translate(${loose.x} ${loose.y}) rotate(${rollers.looseDegrees}) translate(0 ${size + 17})`}
          >
            loose strand moves {movement.text}
          </text>
        )}
        <Centres scene={scene} y={ROOM.height - 14} text={format.length(centres)} />
      </svg>
      <figcaption>{words}. To scale; the motor may stand on either side and at any height.</figcaption>
    </figure>
  );
}
