import * as z from 'zod/mini';
import { Pack } from './schema/index';
import { closedObjects } from './schema/parts';

/** The pack format as a JSON Schema (draft 2020-12), made from the Zod schema, so that other tools can check packs. */
export function packJsonSchema(): Record<string, unknown> {
  const schema = z.toJSONSchema(Pack, {
    io: 'input',
    override: ({ zodSchema, jsonSchema }) => {
      if (!closedObjects.has(zodSchema)) return;
      jsonSchema.patternProperties = { '^x-': {} };
      jsonSchema.additionalProperties = false;
    },
  });
  return { ...schema, title: 'Bedplate pack, schema 1' } as Record<string, unknown>;
}
