import { toJsonSchema } from '@valibot/to-json-schema';
import { findingsFileSchema } from '../../src/schema/findings-file.ts';

/** The shape of a findings file as JSON Schema 2020-12, written out as a file is. */
export function findingsJsonSchema(): string {
  const schema = toJsonSchema(findingsFileSchema, { target: 'draft-2020-12', errorMode: 'throw' });
  return `${JSON.stringify(schema, null, 2)}\n`;
}
