import * as v from 'valibot';
import { LIVE_TEST_SUBJECTS } from '../../schema/live-tests/live-tests.ts';
import type { OneByOne } from './test-kind.ts';

/** A test as it is being filled in. The schema of its subject says when it can be an entry of the record. */
export type FilledIn = Readonly<Record<string, unknown>>;

/** With one field changed. Nothing, or no words, takes the field away: it is never kept as empty or zero. */
export function withField(test: FilledIn, key: string, value: unknown): FilledIn {
  const { [key]: _before, ...rest } = test;
  return value === null || value === '' || value === undefined ? rest : { ...rest, [key]: value };
}

/** Fields without which a test is none, in the order of the schema; `made` is drawn when it is written. */
export function neededFields(subject: OneByOne): string[] {
  return Object.entries(entriesOf(subject))
    .filter(([key, schema]) => key !== 'made' && !v.is(schema, undefined))
    .map(([key]) => key);
}

export function missingFields(subject: OneByOne, test: FilledIn): string[] {
  return neededFields(subject).filter((key) => test[key] === undefined);
}

/** Whether the schema lets this value stand in this field. */
export function fieldAllows(subject: OneByOne, key: string, value: unknown): boolean {
  const schema = schemaOf(subject, key);
  return schema !== undefined && v.is(schema, value);
}

/** The stored shape of one field; none where the subject has no such field. */
export function schemaOf(subject: OneByOne, key: string): v.GenericSchema<unknown> | undefined {
  return entriesOf(subject)[key];
}

export function isStorable(subject: OneByOne, test: FilledIn): boolean {
  return v.is(LIVE_TEST_SUBJECTS[subject].value, { ...test, made: ANY_STAMP });
}

/** Stands in for the stamp that is drawn when the test is written. */
const ANY_STAMP = `000001790000000.000000.${'0'.repeat(32)}`;

function entriesOf(subject: OneByOne): Readonly<Record<string, v.GenericSchema<unknown>>> {
  return LIVE_TEST_SUBJECTS[subject].value.entries;
}
