import { isObject, type Json, type JsonObject, sameJson } from '../../sharing/propose/json';
import { changesTold as texts } from '../../text/catalogue/changes-told';

/** A value in a form that can be typed again: "11 to 13", "yes", "a, b". */
export function typedForm(value: Json | undefined): string {
  if (value === undefined || value === null) return '';
  if (typeof value === 'boolean') return texts.yesNo(value);
  if (typeof value === 'string' || typeof value === 'number') return String(value);
  if (isList(value)) return value.map(typedForm).join(', ');
  if (isObject(value) && value.is !== undefined) return typedForm(value.is);
  if (isRange(value)) {
    const { from, to } = value;
    if (from === undefined) return texts.to(String(to));
    return to === undefined ? texts.from(String(from)) : texts.range(String(from), String(to));
  }
  return JSON.stringify(value);
}

/** Whether such a value can be changed by typing it anew, so that all of it is seen: no list of cases is. */
export function isTypable(value: Json | undefined): boolean {
  return value === undefined || sameJson(valueTyped(typedForm(value), value), value);
}

/**
 * What was typed in the place of a value, as a value of the same kind; undefined where it is none. What a fact says
 * beside its value (its source, when it holds) stays.
 */
export function valueTyped(typed: string, was: Json | undefined): Json | undefined {
  const text = typed.normalize('NFC').trim();
  if (text === '') return undefined;
  if (typeof was === 'boolean') return yesNo(text);
  if (typeof was === 'number') return number(text);
  if (was === undefined || was === null || typeof was === 'string') return text;
  if (isList(was)) {
    const parts = text.split(',').map((part) => valueTyped(part, was[0]));
    return parts.some((part) => part === undefined) ? undefined : (parts as Json[]);
  }
  if (isObject(was) && was.is !== undefined) {
    const is = valueTyped(text, was.is);
    return is === undefined ? undefined : { ...was, is };
  }
  return isRange(was) ? range(text) : undefined;
}

function isList(value: Json): value is readonly Json[] {
  return Array.isArray(value);
}

function isRange(value: Json): value is JsonObject {
  const keys = isObject(value) ? Object.keys(value) : [];
  return keys.length > 0 && keys.every((key) => key === 'from' || key === 'to');
}

function yesNo(text: string): boolean | undefined {
  const lower = text.toLowerCase();
  return lower === texts.yesNo(true) ? true : lower === texts.yesNo(false) ? false : undefined;
}

function number(text: string): number | undefined {
  return /^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : undefined;
}

/** "11 to 13", "11 or more", "13 or less", or one number, which is both ends. */
function range(text: string): JsonObject | undefined {
  const [first, second] = [...text.matchAll(/-?\d+(?:\.\d+)?/g)].map(([digits]) => Number(digits));
  if (first === undefined) return undefined;
  if (text === texts.range(String(first), String(second))) return { from: first, to: second };
  if (text === texts.from(String(first))) return { from: first };
  if (text === texts.to(String(first))) return { to: first };
  return text === String(first) ? { from: first, to: first } : undefined;
}
