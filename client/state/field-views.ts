// One field as the page shows it, and whether it applies: the same for the drawing, the list and the card.
import type { AppliesWhen, Field } from '../../parts-library/parts/index.js';
import type { Json, JsonObject } from '../../parts-library/model/index.js';
import type { Unit } from '../../parts-library/units/index.js';
import { fieldEcho, fieldText } from '../list/field-text.js';
import { groupOf, isObject, plainText, valueAt } from './values.js';

export interface FieldView {
  readonly field: Field;
  /** What stands in its input. */
  readonly text: string;
  /** What was understood, in both units. */
  readonly echo: readonly string[];
  /** What is wrong with the entry, in one or two sentences. */
  readonly problem: string | undefined;
  /** True when nothing was entered and the family's own value counts. */
  readonly isStart: boolean;
  readonly value: Json | undefined;
}

/** What the views are made from. */
export interface FieldsNow {
  /** As stored in the row. */
  readonly entered: JsonObject;
  /** As read by the family, starting values filled in. */
  readonly understood: JsonObject;
  readonly drafts: Readonly<Record<string, string>>;
  readonly problems: Readonly<Record<string, string>>;
  readonly unit: Unit;
}

/** A field's view from what was entered, understood and is being typed. */
export function viewField(field: Field, now: FieldsNow): FieldView {
  const value = valueAt(now.understood, field.path);
  const draft = now.drafts[field.path];
  return {
    field,
    value,
    text: draft ?? fieldText(field, value, now.unit),
    echo: fieldEcho(field, value),
    problem: now.problems[field.path],
    isStart: draft === undefined && value !== undefined && valueAt(now.entered, field.path) === undefined,
  };
}

/** The words of a value that another field's conditions are about: a choice, or the kind of a hole. */
const wordOf = (value: Json | undefined): string => {
  if (isObject(value)) return typeof value['kind'] === 'string' ? value['kind'] : '';
  return plainText(value);
};

const meets = (condition: AppliesWhen, group: string, understood: JsonObject): boolean => {
  const path = group === '' ? condition.field : `${group}.${condition.field}`;
  return condition.values.includes(wordOf(valueAt(understood, path)));
};

/**
 * Whether a field matters now. A condition names a field of its own group; a field of a group that is left out does
 * not apply.
 */
export function fieldApplies(field: Field, understood: JsonObject): boolean {
  const group = groupOf(field.path);
  if (group !== '' && valueAt(understood, group) === undefined) return false;
  return field.appliesWhen === undefined || meets(field.appliesWhen, group, understood);
}
