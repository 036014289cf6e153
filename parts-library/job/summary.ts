// A run as the plain JSON that the command line and the HTTP interface share. Lengths mm, areas mm², mass kg, seconds.
import { areaOf, isCircle, lengthOf, type Bounds } from '../geometry/index.js';
import {
  isMark,
  isOpening,
  type Derived,
  type Finding,
  type HardwareItem,
  type JsonObject,
  type ShopStep,
} from '../model/index.js';
import type { Unit } from '../units/index.js';
import { freshJson, isObject } from './json-guard.js';
import { operationsOf } from './operations.js';
import type { PartRun, PartValue } from './run-part.js';

export interface PartSummary {
  readonly family: string;
  readonly name: string;
  readonly material: string;
  readonly thickness: number;
  readonly quantity: number;
  /** Net, one copy. */
  readonly area: number;
  /** Finished outline and openings. */
  readonly perimeter: number;
  /** One copy. */
  readonly mass: number;
  readonly bounds: Bounds & { readonly width: number; readonly height: number };
  readonly openings: readonly {
    readonly id: string;
    readonly name: string;
    readonly area: number;
    readonly perimeter: number;
    /** Only of a round one. */
    readonly diameter?: number;
  }[];
  readonly marks: readonly {
    readonly id: string;
    readonly name: string;
    readonly x: number;
    readonly y: number;
  }[];
}

export interface CutSummary {
  /** Compensated torch-on path of openings and outline. */
  readonly length: number;
  readonly pierces: number;
  /** Torch-on time, the likely one: contours and lead-ins at their speeds plus pierce delays. */
  readonly seconds: number;
  readonly secondsRange: { readonly low: number; readonly high: number };
  readonly leadInLength: number;
  /** Scores and etched lines. */
  readonly lineLength: number;
  readonly marks: number;
  readonly processClass: string;
  readonly kerf: number;
  readonly kerfPlusMinus: number;
  readonly holeKerf: number;
  /** mm/min */
  readonly speed: number;
  readonly pierceSeconds: number;
  readonly travelIncluded: false;
  readonly contours: readonly {
    readonly featureId: string;
    readonly length: number;
    readonly leadIn: number;
    readonly speed: number;
    readonly seconds: number;
  }[];
}

export interface RunSummary {
  readonly unit: Unit;
  /** As understood: what was typed beside its metric value. */
  readonly parameters: JsonObject;
  readonly part: PartSummary;
  readonly cut: CutSummary;
  /** What follows from what was typed, such as the circle from a reading. */
  readonly derived: readonly Derived[];
  readonly findings: readonly Finding[];
  /** Every operation in order, from the torch to paint. */
  readonly steps: readonly ShopStep[];
  /** What is bought or sawn to go with it. */
  readonly hardware: readonly HardwareItem[];
}

/** A millionth of a unit: below it a figure is noise of the arithmetic. */
// Adding zero turns -0 into 0.
const round = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;

/** The run as plain JSON, or undefined when it has no value. */
export function summarise(run: PartRun): RunSummary | undefined {
  if (run.value === undefined) return undefined;
  const parameters = freshJson(run.value.parameters);
  return {
    unit: run.unit,
    parameters: isObject(parameters) ? parameters : {},
    part: summarisePart(run.family, run.value),
    cut: summariseCut(run.value),
    derived: run.value.derived,
    findings: run.findings,
    steps: operationsOf(run),
    hardware: run.value.hardware,
  };
}

function summarisePart(family: string, { part, area, perimeter, mass, bounds }: PartValue): PartSummary {
  const { minX, minY, maxX, maxY } = bounds;
  return {
    family,
    name: part.name,
    material: part.material,
    thickness: round(part.thickness),
    quantity: part.quantity,
    area: round(area),
    perimeter: round(perimeter),
    mass: round(mass),
    bounds: {
      minX: round(minX),
      minY: round(minY),
      maxX: round(maxX),
      maxY: round(maxY),
      width: round(maxX - minX),
      height: round(maxY - minY),
    },
    openings: part.features.filter(isOpening).map(({ id, name, contour }) => {
      const circle = isCircle(contour);
      return {
        id,
        name,
        area: round(Math.abs(areaOf(contour))),
        perimeter: round(lengthOf(contour)),
        ...(circle === undefined ? {} : { diameter: round(2 * circle.radius) }),
      };
    }),
    marks: part.features
      .filter(isMark)
      .map(({ id, name, at }) => ({ id, name, x: round(at.x), y: round(at.y) })),
  };
}

function summariseCut({ figures, process }: PartValue): CutSummary {
  const { kerf, kerfPlusMinus, holeKerf, speed, pierceSeconds } = process.settings;
  return {
    length: round(figures.length),
    pierces: figures.pierces,
    seconds: round(figures.seconds.likely),
    secondsRange: { low: round(figures.seconds.low), high: round(figures.seconds.high) },
    leadInLength: round(figures.leadInLength),
    lineLength: round(figures.lineLength),
    marks: figures.marks,
    processClass: process.processClass,
    kerf: round(kerf),
    kerfPlusMinus: round(kerfPlusMinus),
    holeKerf: round(holeKerf),
    speed: round(speed),
    pierceSeconds: round(pierceSeconds),
    travelIncluded: false,
    contours: figures.contours.map((contour) => ({
      featureId: contour.featureId,
      length: round(contour.length),
      leadIn: round(contour.leadIn),
      speed: round(contour.speed),
      seconds: round(contour.seconds),
    })),
  };
}
