import { checkDefinition } from '../../src/schema/check-definition.ts';
import { minimalDefinition, minimalDefinitionWith } from '../schema/minimal-definition.ts';
import { type Expected, type HostileFile, refused, taken, utf8 } from './hostile-file.ts';
import { SCRIPTS, withTexts } from './hostile-texts.ts';
import { DEFINITION_TEXT } from './sound-bench.ts';

type Row = [name: string, expect: Expected, text: () => string | Uint8Array<ArrayBuffer>];

const json = (value: unknown) => JSON.stringify(value);
const with_ = (changes: Readonly<Record<string, unknown>>) => () => json(minimalDefinitionWith(changes));
const plain = () => json(minimalDefinition());
const many = (count: number) => Array.from({ length: count }, (_, i) => ({ id: `zone-${i}`, title: 'Z', weight: 1 }));

/** Checklists of one's own that are not what they seem. */
const ROWS: Row[] = [
  ['a definition that is no JSON', refused('not JSON'), () => '{"id":'],
  ['a definition that is a page of HTML', refused('not JSON'), () => '<!doctype html><script>window.ran=1</script>'],
  ['a definition of null', refused('definition'), () => 'null'],
  ['a list of definitions', refused('id is missing'), () => `[${plain()}]`],
  ['a definition nested 100 000 levels', refused('nested deeper'), () => '['.repeat(100_000) + ']'.repeat(100_000)],
  ['a definition of 10 MB', refused('larger than'), () => plain().replace('"Minimal"', `"${'x'.repeat(10_000_000)}"`)],
  ['a title of 30 000 letters', refused('holds a text of'), () => plain().replace('"Minimal"', `"${'x'.repeat(30_000)}"`)],
  ['a prototype key in a definition', refused('__proto__'), () => plain().replace('{', '{"__proto__":{"status":"released"},')],
  ['constructor in a definition', refused('constructor'), () => plain().replace('{', '{"constructor":{"prototype":{}},')],
  ['an item called constructor', refused('items[0].id'), with_({ 'items[0].id': 'constructor' })],
  ['a script as an id', refused('items[0].id'), with_({ 'items[0].id': '<script>' })],
  ['a path as an id', refused('id'), with_({ id: '../../lfp-drop-in' })],
  ['a version of 1e308', refused('version'), with_({ version: '1e308' })],
  ['a zone that weighs 1e308', refused('zones[0].weight'), with_({ 'zones[0].weight': 1e308 })],
  ['a zone that weighs -0', refused('zones[0].weight'), () => plain().replace('"weight":1', '"weight":-0')],
  ['a zone that weighs 1e999', refused('Infinity'), () => plain().replace('"weight":1', '"weight":1e999')],
  ['an item that weighs 5e-324', refused('items[0].weight'), with_({ 'items[0].weight': 5e-324 })],
  ['a factor of 1e21', refused('k.high'), with_({ 'k.high': 1e21 })],
  ['a factor of 5e-324', taken(), with_({ 'k.high': 5e-324 })],
  ['credits that rise', refused('credits.weak'), with_({ 'credits.weak': 1 })],
  ['a thousand zones', refused('zones'), with_({ zones: many(1000) })],
  ['an item of a zone that is not there', refused('items[0].zone'), with_({ 'items[0].zone': 'nowhere' })],
  ['a title that runs backwards', refused('U+202E'), with_({ 'items[0].title': 'Vents\u202edeliaf' })],
  ['a null in a sentence', refused('U+0000'), with_({ 'items[0].grades.failed': 'Sealed\u0000.' })],
  ['half a character in a sentence', refused('half a character'), () => plain().replace('All free.', '\\ud83d')],
  ['a field that no definition has', refused('onload'), with_({ onload: 'window.ran=1' })],
  ['the built-in id and version with another text', refused('taken'), () => DEFINITION_TEXT.replace('"title":', ' "title":')],
  ['script in every text of a definition', taken(), () => json(scriptsInDefinition())],
]; // biome-ignore format: a table

export const DEFINITION_FILES: HostileFile[] = ROWS.map(([name, expect, text]) => ({
  name,
  kind: 'definition',
  bytes: async () => {
    const made = text();
    return typeof made === 'string' ? utf8(made) : made;
  },
  expect,
}));

/** A definition with a script wherever it may hold any text, each with a number so that no two are alike. */
export function scriptsInDefinition(): unknown {
  const named = { ...(minimalDefinition() as object), id: 'own-scripts' };
  return withTexts(
    named,
    (place) => `${SCRIPTS[place % SCRIPTS.length]} ${place}`,
    (whole) => checkDefinition(whole).ok,
  );
}
