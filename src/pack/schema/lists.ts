import * as z from 'zod/mini';

/** More issues of one list help nobody, and a million of them would fill memory: reading stops there. */
const MOST_ISSUES = 200;

type Schema = z.core.SomeType;
type Payload = z.core.ParsePayload;
type Context = z.core.ParseContextInternal;

const ZodArray: z.core.$constructor<z.ZodMiniArray> = z.ZodMiniArray;
const ZodRecord: z.core.$constructor<z.ZodMiniRecord> = z.ZodMiniRecord;

function readInto(payload: Payload, schema: Schema, key: PropertyKey, value: unknown, ctx: Context): void {
  // Nothing in a pack's schema is asynchronous.
  const read = schema._zod.run({ value, issues: [] }, ctx) as Payload;
  for (const issue of z.core.util.prefixIssues(key, read.issues)) payload.issues.push(issue);
}

/**
 * Zod's own array and record read on after any number of issues, and hand them up as the arguments of one call: a list
 * of 300,000 wrong entries overflows the stack. These two stop, and answer the very value that they were given, which
 * is the same because nothing in a pack's schema changes a value.
 */
const StoppingArray = z.core.$constructor<z.ZodMiniArray>('StoppingArray', (inst, def) => {
  ZodArray.init(inst, def);
  inst._zod.parse = (payload, ctx) => {
    const input: unknown = payload.value;
    if (!Array.isArray(input)) {
      payload.issues.push({ code: 'invalid_type', expected: 'array', input, inst });
      return payload;
    }
    for (let i = 0; i < input.length && payload.issues.length < MOST_ISSUES; i++)
      readInto(payload, def.element, i, input[i], ctx);
    return payload;
  };
});

const StoppingRecord = z.core.$constructor<z.ZodMiniRecord>('StoppingRecord', (inst, def) => {
  ZodRecord.init(inst, def);
  inst._zod.parse = (payload, ctx) => {
    const input: unknown = payload.value;
    if (!z.core.util.isPlainObject(input)) {
      payload.issues.push({ code: 'invalid_type', expected: 'record', input, inst });
      return payload;
    }
    for (const [key, value] of Object.entries(input)) {
      if (payload.issues.length >= MOST_ISSUES) break;
      const name = def.keyType._zod.run({ value: key, issues: [] }, ctx) as Payload;
      if (name.issues.length > 0) {
        const issues = name.issues.map((issue) => z.core.util.finalizeIssue(issue, ctx, z.core.config()));
        payload.issues.push({ code: 'invalid_key', origin: 'record', issues, input: key, path: [key], inst });
      } else readInto(payload, def.valueType, key, value, ctx);
    }
    return payload;
  };
});

/** A list of such elements. */
export function list<E extends Schema>(element: E): z.ZodMiniArray<E> {
  return new StoppingArray({
    type: 'array',
    element: element as Schema as z.core.$ZodType,
  }) as unknown as z.ZodMiniArray<E>;
}

/** An object of any number of such keys and values. */
export function table<K extends z.core.$ZodRecordKey, V extends Schema>(keyType: K, values: V): z.ZodMiniRecord<K, V> {
  const valueType = values as Schema as z.core.$ZodType;
  return new StoppingRecord({ type: 'record', keyType, valueType }) as unknown as z.ZodMiniRecord<K, V>;
}
