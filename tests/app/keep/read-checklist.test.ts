import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readChecklist } from '../../../src/app/keep/read-checklist.ts';
import { whereInJson } from '../../../src/app/keep/where-in-json.ts';
import { placeInWords } from '../../../src/text/checklists.ts';

const RACK = readFileSync('checklists/lfp-rack/0.1.0.json', 'utf8');
const bytesOf = (text: string): ArrayBuffer => new Uint8Array(new TextEncoder().encode(text)).buffer;
const read = (text: string) => readChecklist(bytesOf(text));

describe('a checklist file', () => {
  it('that is right is read, with its own text', () => {
    const result = read(RACK);
    expect(result).toMatchObject({ ok: true, text: RACK });
  });

  it('with one error names the item by number and id: items[1] is item 2, the earth bond', () => {
    const result = read(
      RACK.replace(
        '"state": "arrival",\n      "route": "short",\n      "weight": 4,\n      "safety": true',
        '"state": "tomorrow",\n      "route": "short",\n      "weight": 4,\n      "safety": true',
      ),
    );
    expect(result).toMatchObject({ ok: false, more: 0, lines: [{ place: 'Item 2 (earth-bond), state' }] });
  });

  it('with 25 errors shows 20 and says 5 more', () => {
    const parsed = JSON.parse(RACK);
    for (const item of parsed.items) item.weight = 9;
    const result = read(JSON.stringify(parsed));
    expect(result.ok).toBe(false);
    if (result.ok) return;
    expect([result.lines.length, result.more]).toEqual([20, 5]);
  });

  it('that holds a turning character is refused with its place, and the character is not shown', () => {
    const result = read(RACK.replace('Front panel', 'Front \u202Epanel'));
    expect(result).toMatchObject({ ok: false, lines: [{ place: 'Zone 2 (front-panel), title' }] });
    expect(JSON.stringify(result)).not.toContain('\u202E');
  });

  it('with a prototype key, half a character or an endless number is refused', () => {
    for (const bad of ['{"__proto__": {"id": "x"}}', '{"id": "\\ud800"}', '{"id": 1e999}']) {
      expect(read(bad).ok).toBe(false);
    }
  });

  it('nested 100,000 deep is refused, not a crash', () => {
    expect(read('['.repeat(100_000) + ']'.repeat(100_000)).ok).toBe(false);
  });

  it('of 4 MB and a byte is too large, of none is empty, of Latin-1 is no text', () => {
    const said = [
      new ArrayBuffer(4 * 1024 * 1024 + 1),
      new ArrayBuffer(0),
      new Uint8Array([0x7b, 0xe9, 0x7d]).buffer,
    ].map((bytes) => {
      const result = readChecklist(bytes);
      return result.ok ? '' : result.sentence;
    });
    expect(said[0]).toMatch(/^it is larger than the 4\.2\sMB /);
    expect(said.slice(1)).toEqual(['it is empty.', 'it is not text in UTF-8.']);
  });
});

describe('where a text stops being JSON', () => {
  const text = '{\n  "a": 1,,\n}';

  // The messages as the engines give them: V8 of Node 20 and of Chromium, Firefox, WebKit.
  it.each([
    ['Expected double-quoted property name in JSON at position 11', { line: 2, column: 10 }],
    ['Expected double-quoted property name in JSON at position 11 (line 2 column 10)', { line: 2, column: 10 }],
    ['JSON.parse: expected double-quoted property name at line 2 column 10 of the JSON data', { line: 2, column: 10 }],
    ['Unexpected end of JSON input', { line: 3, column: 2 }],
    ["JSON Parse error: Unexpected token ','", null],
  ])('%s', (message, expected) => {
    expect(whereInJson(text, message)).toEqual(expected);
  });

  it('is line 2, column 10 by the engine that runs this test', () => {
    const result = read(text);
    expect(result).toMatchObject({ ok: false, lines: [{ place: 'Line 2, column 10:', reason: '"a": 1,,' }] });
  });
});

describe('a place in words', () => {
  const idAt = (list: string, index: number) => (list === 'items' && index === 3 ? 'cell-vents' : null);

  it.each([
    ['definition', 'The file as a whole'],
    ['items[3].grades.weak', 'Item 4 (cell-vents), grades, weak'],
    ['items[0].measure.inputs[1].id', 'Item 1, measure, input 2, id'],
    ['facts[2].choices[0].text', 'Fact 3, choice 1, text'],
    ['k.high', 'K, high'],
  ])('%s is “%s”', (place, said) => {
    expect(placeInWords(place, idAt)).toBe(said);
  });
});
