// What this house takes from the npm package dxf-parser: its own declarations bring the types of Node with them.

/** A group: its code, and its value as a text or a number by the code. */
export interface Group {
  readonly code: number;
  readonly value: number | string | boolean;
}

/** The reader's place in the file. */
export interface Scanner {
  next(): Group;
  isEOF(): boolean;
}

export interface Entity {
  readonly type: string;
  readonly layer?: string;
  /** Group 5. */
  readonly handle?: string | number;
  /** Whatever the entity's handler has read; nothing of it is sure to be there. */
  readonly [name: string]: unknown;
}

export interface EntityHandler {
  readonly ForEntityName: string;
  parseEntity(scanner: Scanner, first: Group): Entity;
}

export interface Block {
  readonly name: string;
  readonly position?: { readonly x: number; readonly y: number };
  readonly entities?: readonly Entity[];
}

export interface Dxf {
  readonly entities?: readonly Entity[];
  readonly blocks?: Readonly<Record<string, Block>>;
}

export default class DxfParser {
  registerEntityHandler(handler: new () => EntityHandler): void;
  /** @throws Error for a file that does not keep the order of groups */
  parseSync(text: string): Dxf | null;
}
