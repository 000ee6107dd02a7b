import { toJsonSchema } from '@valibot/to-json-schema';
import { checklistSchema } from '../../src/schema/checklist.ts';

/** The shape of a definition as JSON Schema (draft-07, which editors read), written out as a file is. */
export function definitionJsonSchema(): string {
  const schema = toJsonSchema(checklistSchema, { typeMode: 'input', target: 'draft-07', errorMode: 'throw' });
  const titled = { $schema: schema.$schema, title: 'Underlid checklist definition', ...schema };
  return `${JSON.stringify(titled, null, 2)}\n`;
}
