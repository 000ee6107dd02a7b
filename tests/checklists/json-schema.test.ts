import { readFileSync, writeFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { definitionJsonSchema } from './json-schema.ts';

const PATH = 'checklists/checklist.schema.json';

/** After a change in src/schema/checklist.ts: UPDATE_SCHEMA=1 with this test writes the file anew. */
it('checklist.schema.json is what src/schema gives today (UPDATE_SCHEMA=1 rewrites it)', () => {
  const today = definitionJsonSchema();
  if (process.env.UPDATE_SCHEMA === '1') writeFileSync(PATH, today);
  expect(readFileSync(PATH, 'utf8')).toBe(today);
});

it('asks for 11 fields of a definition, refuses others, and knows the 4 grades and the 5 states', () => {
  const schema = JSON.parse(readFileSync(PATH, 'utf8'));
  const item = schema.properties.items.items;
  // By hand from DESIGN §4: id, version, status, title, fits, zones, hazards, k, facts, items, remedies.
  expect(schema.required).toHaveLength(11);
  expect(schema.additionalProperties).toBe(false);
  expect(Object.keys(item.properties.grades.properties)).toEqual(['sound', 'passable', 'weak', 'failed']);
  expect(item.properties.state.enum).toEqual(['arrival', 'loaded', 'untouched', 'liveOpen', 'apart']);
  expect(item.required).not.toContain('hazard');
});
