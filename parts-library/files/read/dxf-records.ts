// Entities and blocks of a DXF file as lists of groups, read by dxf-parser from a text that can do it no harm.
import DxfParser, { type Block, type Entity, type Scanner } from 'dxf-parser';
import type { FileGroup } from './dxf-groups.js';
import { DrawingProblem } from './problem.js';

/** A group: its code, and its value as a text or a number by the code. */
export interface Group {
  readonly code: number;
  readonly value: number | string | boolean;
}

/** One entity: what it is, where in the file it stands, and its groups in order. */
export interface EntityRecord {
  readonly type: string;
  readonly layer: string;
  /** Line of the file. */
  readonly line: number;
  readonly groups: readonly Group[];
  /** Corners of a polyline of the old kind. */
  readonly vertices: readonly (readonly Group[])[];
}

export interface BlockRecord {
  readonly base: { readonly x: number; readonly y: number };
  readonly records: readonly EntityRecord[];
}

export interface DxfRecords {
  readonly entities: readonly EntityRecord[];
  readonly blocks: ReadonlyMap<string, BlockRecord>;
  /** Kinds that hold no line to cut, or none that this reader knows, and how many of each. */
  readonly passedOver: ReadonlyMap<string, number>;
}

/** The kinds that shapes are made of. */
const KINDS = [
  'LINE',
  'ARC',
  'CIRCLE',
  'ELLIPSE',
  'LWPOLYLINE',
  'POLYLINE',
  'SPLINE',
  'POINT',
  'INSERT',
] as const;

/** Belong to an entity before them. */
const FOLLOWERS: ReadonlySet<string> = new Set(['VERTEX', 'SEQEND', 'ATTRIB']);

/** Codes that shapes are read from; others only describe how a thing looks. */
const isWanted = (code: number): boolean =>
  code === 2 || code === 8 || (code >= 10 && code <= 75) || (code >= 210 && code <= 230);

/**
 * The parser's own handlers leave out an extrusion of circles and ellipses, weights of splines, and corners of a
 * polyline behind a group that they do not know, and they loop on one without an end. Ours keeps every group.
 */
function handlerOf(name: string) {
  return class {
    readonly ForEntityName = name;

    parseEntity(scanner: Scanner, first: Group): Entity {
      const entity = { type: name, groups: [] as Group[], vertices: [] as Group[][] };
      let groups = entity.groups;
      for (let group = first; !scanner.isEOF();) {
        group = scanner.next();
        if (group.code === 0 && group.value === 'VERTEX' && name === 'POLYLINE') {
          groups = [];
          entity.vertices.push(groups);
        } else if (group.code === 0 && !(group.value === 'SEQEND' && name === 'POLYLINE')) break;
        else groups.push(group);
      }
      return entity;
    }
  };
}

/** The groups as a text again: entities by kinds that are known, each with its line in place of its handle. */
function cleaned(groups: readonly FileGroup[], passedOver: Map<string, number>): readonly string[] {
  const lines: string[] = [];
  let keeping = true;
  let owner = '';
  for (const { code, value, line } of groups) {
    if (code === 0) {
      if (!FOLLOWERS.has(value)) owner = value;
      const known = KINDS.some((kind) => kind === value) || value === 'BLOCK' || value === 'ENDBLK';
      keeping = known || (owner === 'POLYLINE' && (value === 'VERTEX' || value === 'SEQEND'));
      if (!known && !FOLLOWERS.has(value)) passedOver.set(value, (passedOver.get(value) ?? 0) + 1);
      if (keeping) lines.push('0', value, '5', String(line));
    } else if (keeping && isWanted(code)) lines.push(String(code), value);
  }
  return lines;
}

const isGroups = (value: unknown): value is readonly Group[] => Array.isArray(value);
const isCorners = (value: unknown): value is readonly (readonly Group[])[] => Array.isArray(value);

function recordOf(entity: Entity): EntityRecord {
  const groups = isGroups(entity['groups']) ? entity['groups'] : [];
  const layer = groups.find(({ code }) => code === 8)?.value;
  return {
    type: entity.type,
    layer: typeof layer === 'string' ? layer : '0',
    line: Number(groups.find(({ code }) => code === 5)?.value ?? 0),
    groups,
    vertices: isCorners(entity['vertices']) ? entity['vertices'] : [],
  };
}

/** @throws DrawingProblem for groups out of their order */
export function dxfRecords(blocks: readonly FileGroup[], entities: readonly FileGroup[]): DxfRecords {
  const passedOver = new Map<string, number>();
  const text = [
    '0\nSECTION\n2\nBLOCKS',
    ...cleaned(blocks, passedOver),
    '0\nENDSEC\n0\nSECTION\n2\nENTITIES',
    ...cleaned(entities, passedOver),
    '0\nENDSEC\n0\nEOF\n',
  ].join('\n');
  const parser = new DxfParser();
  for (const kind of KINDS) parser.registerEntityHandler(handlerOf(kind));
  const read = parsed(parser, text);
  const named = Object.entries(read?.blocks ?? {}).map(([name, block]) => [name, blockOf(block)] as const);
  return { entities: (read?.entities ?? []).map(recordOf), blocks: new Map(named), passedOver };
}

const blockOf = ({ position, entities = [] }: Block): BlockRecord => ({
  base: { x: position?.x ?? 0, y: position?.y ?? 0 },
  records: entities.map(recordOf),
});

function parsed(parser: DxfParser, text: string) {
  try {
    return parser.parseSync(text);
  } catch (error) {
    throw new DrawingProblem(
      `Blocks or entities are out of order: ${error instanceof Error ? error.message : 'unreadable'}`,
    );
  }
}
