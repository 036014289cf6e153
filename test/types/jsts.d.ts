// The part of jsts that the tests use as an independent referee: polygons, areas, buffers and validity.
declare module 'jsts/org/locationtech/jts/geom/Coordinate.js' {
  export default class Coordinate {
    constructor(x: number, y: number);
    readonly x: number;
    readonly y: number;
  }
}
declare module 'jsts/org/locationtech/jts/geom/GeometryFactory.js' {
  import type Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
  export interface Geometry {
    getArea(): number;
    getLength(): number;
    isEmpty(): boolean;
  }
  export interface LinearRing extends Geometry {
    isRing(): boolean;
  }
  export default class GeometryFactory {
    createLinearRing(coordinates: Coordinate[]): LinearRing;
    createPolygon(shell: LinearRing, holes?: LinearRing[]): Geometry;
  }
}
declare module 'jsts/org/locationtech/jts/algorithm/Centroid.js' {
  import type Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
  import type { Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
  const Centroid: { getCentroid(geometry: Geometry): Coordinate };
  export default Centroid;
}
declare module 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js' {
  import type { Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
  import type BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
  const BufferOp: { bufferOp(geometry: Geometry, distance: number, parameters: BufferParameters): Geometry };
  export default BufferOp;
}
declare module 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js' {
  export default class BufferParameters {
    constructor(quadrantSegments: number);
    setSimplifyFactor(factor: number): void;
  }
}
declare module 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js' {
  import type { Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
  const IsValidOp: { isValid(geometry: Geometry): boolean };
  export default IsValidOp;
}
