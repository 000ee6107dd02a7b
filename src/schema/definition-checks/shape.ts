import * as v from 'valibot';
import { type Checklist, checklistSchema } from '../checklist.ts';
import { whyNotPlainJson } from '../plain-json.ts';
import { hiddenPlaces } from '../plain-text.ts';
import type { Problem } from './problem.ts';

type Issue = v.BaseIssue<unknown>;

const TYPE_WORDS: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  boolean: 'true or false',
  Array: 'a list',
  Object: 'an object',
};

/**
 * The definition with its defaults filled in, or what is wrong with its shape. What is no plain JSON (prototype keys,
 * half characters, endless numbers) and what hides in a text is refused before the shape is looked at.
 */
export function definitionShape(input: unknown): Checklist | Problem[] {
  const unsafe = whyNotPlainJson(input);
  if (unsafe !== null) return [{ place: 'definition', reason: unsafe }];
  const hidden = hiddenPlaces(input);
  if (hidden.length > 0) {
    return hidden.map(({ place, characters }) => ({
      place: place === '' ? 'definition' : place.replace(/\.(\d+)(?=\.|$)/g, '[$1]'),
      reason: `holds ${characters.join(', ')}, which does not show`,
    }));
  }
  const parsed = v.safeParse(checklistSchema, input);
  return parsed.success ? parsed.output : parsed.issues.map(problemOf);
}

function problemOf(issue: Issue): Problem {
  return { place: placeOf(issue.path ?? []), reason: reasonOf(issue) };
}

function placeOf(path: readonly { key?: unknown }[]): string {
  const place = path.map(({ key }) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`)).join('');
  return place === '' ? 'definition' : place.replace(/^\./, '');
}

function reasonOf(issue: Issue): string {
  if (issue.type === 'strict_object' && issue.expected === 'never') return 'is not a field a checklist has';
  if (issue.input === undefined) return 'is missing';
  const limit = 'requirement' in issue ? String(issue.requirement) : '';
  switch (issue.type) {
    case 'regex':
      return `${issue.message}, got ${JSON.stringify(issue.input)}`;
    case 'min_length':
      return limit === '1' ? 'is empty' : `has fewer than ${limit} entries`;
    case 'max_length':
      return `has more than ${limit} ${typeof issue.input === 'string' ? 'characters' : 'entries'}`;
    case 'min_value':
      return `must be at least ${limit}, got ${issue.received}`;
    case 'max_value':
      return `must be at most ${limit}, got ${issue.received}`;
    case 'integer':
      return `must be a whole number, got ${issue.received}`;
    default:
      return `must be ${TYPE_WORDS[issue.expected ?? ''] ?? issue.expected}, got ${issue.received}`;
  }
}
