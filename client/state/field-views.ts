// One field as the page shows it, and whether it applies: the same for the drawing, the list and the card.
import { computed, type ReadonlySignal } from '@preact/signals';
import type { AppliesWhen, Field } from '../../parts-library/parts/index.js';
import type { Derived, Json, JsonObject } from '../../parts-library/model/index.js';
import type { Unit } from '../../parts-library/units/index.js';
import { writeDerived } from '../list/derived-text.js';
import { fieldEcho, fieldText } from '../list/field-text.js';
import { groupOf, isObject, plainText, valueAt } from './values.js';

export interface FieldView {
  readonly field: Field;
  /** What stands in its input. */
  readonly text: string;
  /** What was understood, in both units. */
  readonly echo: readonly string[];
  /** What follows from it, one line each. */
  readonly gives: readonly string[];
  /** What is wrong with the entry, in one or two sentences. */
  readonly problem: string | undefined;
  /** True when nothing was entered and the family's own value counts. */
  readonly isStart: boolean;
  readonly value: Json | undefined;
}

/** What a view is made from. */
export interface FieldNow {
  readonly field: Field;
  /** As stored in the row. */
  readonly entered: JsonObject;
  /** As read by the family, starting values filled in. */
  readonly understood: JsonObject;
  /** What is being typed, where it differs from what is stored. */
  readonly draft: string | undefined;
  readonly problem: string | undefined;
  /** Everything that the family makes of its readings. */
  readonly derived: readonly Derived[];
  readonly unit: Unit;
}

/** A field's view from what was entered, understood and is being typed. */
export function viewField({
  field,
  entered,
  understood,
  draft,
  problem,
  derived,
  unit,
}: FieldNow): FieldView {
  const value = valueAt(understood, field.path);
  return {
    field,
    value,
    text: draft ?? fieldText(field, value, unit),
    echo: fieldEcho(field, value),
    gives: derived.filter((one) => one.field === field.path).flatMap(writeDerived),
    problem,
    isStart: draft === undefined && value !== undefined && valueAt(entered, field.path) === undefined,
  };
}

/** A field's view as a signal that changes only when something about this very field does. */
export function createFieldView(now: () => FieldNow | undefined): ReadonlySignal<FieldView | undefined> {
  let key = '';
  let view: FieldView | undefined;
  return computed(() => {
    const current = now();
    if (current === undefined) return undefined;
    const { field, entered, understood, draft, problem, derived, unit } = current;
    const about = [
      valueAt(understood, field.path),
      valueAt(entered, field.path) === undefined,
      draft,
      problem,
      derived.filter((one) => one.field === field.path),
      unit,
    ];
    const nextKey = JSON.stringify(about);
    if (nextKey !== key || view?.field !== field) {
      view = viewField(current);
      key = nextKey;
    }
    return view;
  });
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
