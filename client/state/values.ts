// Parameters by dotted path: looking up, placing, and telling an absent group from an absent value.
import type { Json, JsonObject } from '../../parts-library/model/index.js';

export const isObject = (value: Json | undefined): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A plain value as text; empty for a group or nothing. */
export function plainText(value: Json | undefined): string {
  if (typeof value === 'string') return value;
  return typeof value === 'number' || typeof value === 'boolean' ? String(value) : '';
}

/** The value at a dotted path, for example `pattern2.bolts`; undefined when it is not there. */
export function valueAt(parameters: JsonObject, path: string): Json | undefined {
  let value: Json | undefined = parameters;
  for (const name of path.split('.')) value = isObject(value) ? value[name] : undefined;
  return value;
}

/** The parameters with one value placed or, when undefined, taken away. A missing group is made. */
export function withValue(parameters: JsonObject, path: string, value: Json | undefined): JsonObject {
  const [name = '', ...rest] = path.split('.');
  const inner = parameters[name];
  const placed = rest.length === 0 ? value : withValue(isObject(inner) ? inner : {}, rest.join('.'), value);
  const others = Object.fromEntries(Object.entries(parameters).filter(([other]) => other !== name));
  return placed === undefined ? others : { ...others, [name]: placed };
}

/** The group that a path lies in: `pattern2` of `pattern2.bolts`, empty at the top. */
export const groupOf = (path: string): string => path.slice(0, Math.max(0, path.lastIndexOf('.')));
