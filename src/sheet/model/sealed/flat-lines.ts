import type { SealedFigure } from '../../../schema/sealed-sheet.ts';

export type Line = readonly [path: string, figure: SealedFigure];

/** Fields by which the member of a list is named, the first that it has. */
const KEY_FIELDS = ['id', 'itemId', 'zoneId', 'hazardId', 'remedyId', 'leadId', 'number', 'code', 'kind', 'case'];

/**
 * Any result as flat lines by readable path, `zones/vents/q/low`. A list is one line that names its members in their
 * order; what they say goes by their own names, never by place. Those without a name, or with the same one, are
 * counted ("any", "any 2"). A stored test (it has an id and a stamp) only lends its id: what was typed in is sealed as
 * an entry.
 *
 * Check   tests/sheet/sealed/flat-lines.test.ts
 */
export function flatLines(path: string, value: unknown): Line[] {
  if (value === undefined) return [];
  if (isStored(value)) return path.split('/').includes(value.id) ? [] : [[path, value.id]];
  if (Array.isArray(value)) return listLines(path, value);
  if (typeof value !== 'object' || value === null) return [[path, figureOf(path, value)]];
  return Object.entries(value).flatMap(([name, part]) => flatLines(`${path}/${name}`, part));
}

function listLines(path: string, list: readonly unknown[]): Line[] {
  if (list.every(isWord)) return [[path, list.join(', ')]];
  if (list.every(isStored)) return [[path, list.map(({ id }) => id).join(', ')]];
  const names = told(list.map(nameOf));
  const said = list.flatMap((member, place) => {
    const at = `${path}/${names[place]}`;
    // What it goes by is in its path.
    return flatLines(at, member).filter(([line, figure]) => !isOwnName(line, figure, { at, name: names[place] }));
  });
  return [[path, names.join(', ')], ...said];
}

/** Equal names told apart by a count: the second "any" is "any 2". */
function told(names: readonly string[]): string[] {
  const counts = new Map<string, number>();
  return names.map((name) => {
    const count = (counts.get(name) ?? 0) + 1;
    counts.set(name, count);
    return count === 1 ? name : `${name} ${count}`;
  });
}

function isOwnName(
  line: string,
  figure: SealedFigure,
  { at, name }: { at: string; name: string | undefined },
): boolean {
  return KEY_FIELDS.some((field) => line === `${at}/${field}`) && String(figure) === name;
}

/** A list of these is one line. Fractions are lines of their own, because they are compared as numbers. */
function isWord(member: unknown): member is string | number | boolean {
  return typeof member === 'string' || typeof member === 'boolean' || Number.isInteger(member);
}

function nameOf(member: unknown): string {
  // A list in a list, as the alternatives of a derived figure: by what may be the case in it.
  if (Array.isArray(member)) return [...new Set(member.map(nameOf))].join('+');
  if (typeof member !== 'object' || member === null) return 'value';
  const stored = Object.values(member).find(isStored);
  if (stored !== undefined) return stored.id;
  const fields: Readonly<Record<string, unknown>> = { ...member };
  const field = KEY_FIELDS.find((name) => typeof fields[name] === 'string' || typeof fields[name] === 'number');
  return field === undefined ? 'value' : String(fields[field]);
}

function isStored(value: unknown): value is { id: string; made: string } {
  return typeof value === 'object' && value !== null && 'id' in value && 'made' in value;
}

/** JSON has no infinity: an open end says so in a word. What is no number at all cannot be told. */
function figureOf(path: string, value: unknown): SealedFigure {
  if (typeof value === 'number') {
    if (Number.isNaN(value)) return null;
    return Number.isFinite(value) ? value : 'noLimit';
  }
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return value;
  throw new RangeError(`flatLines: ${path} must be a plain value, got ${typeof value}`);
}
