// JSON values and RFC 6902 patch operations: the only way a job is edited.

export type Json = string | number | boolean | null | readonly Json[] | JsonObject;
export interface JsonObject {
  readonly [key: string]: Json;
}

/** One operation of RFC 6902 (JSON Patch). Paths are RFC 6901 pointers. */
export type PatchOperation =
  | { readonly op: 'add' | 'replace' | 'test'; readonly path: string; readonly value: Json }
  | { readonly op: 'remove'; readonly path: string }
  | { readonly op: 'move' | 'copy'; readonly from: string; readonly path: string };
