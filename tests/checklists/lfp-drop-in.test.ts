import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkDefinition } from '../../src/schema/check-definition.ts';
import type { Basis, Item } from '../../src/schema/checklist.ts';
import { GRADES } from '../../src/schema/grade.ts';
import { BUILT_IN_PATH, builtIn } from './built-in.ts';
import { stringsIn } from './strings-in.ts';

/** Counts and lengths: DESIGN §4 ("60–80 items, about 30 on the short route, about 15 safety"); lengths are our choice. */
const { items, hazards, zones } = builtIn;

describe('the first checklist, lfp-drop-in', () => {
  it('is admitted with 0 problems', () => {
    const verdict = checkDefinition(JSON.parse(readFileSync(BUILT_IN_PATH, 'utf8')));
    expect(verdict.ok ? [] : verdict.problems).toEqual([]);
  });

  it('has the 6 zones of the cutaway', () => {
    expect(zones.map(({ id }) => id).toSorted()).toEqual(['bms', 'cells', 'enclosure', 'sensors', 'vents', 'wiring']);
  });

  it('has the factors k 0.40, 0.70, 0.95, 1 and the credits 1, 0.75, 0.35, 0 of DESIGN §5', () => {
    expect(builtIn.k).toEqual({ high: 0.4, serious: 0.7, medium: 0.95, low: 1 });
    expect(builtIn.credits).toEqual({ sound: 1, passable: 0.75, weak: 0.35, failed: 0 });
  });

  it('has 60–80 items and the few a minor version added, 28–36 of them on the short route and 13–18 safety', () => {
    expectWithin(items.length, 60, 90);
    expectWithin(items.filter(({ route }) => route === 'short').length, 28, 36);
    expectWithin(items.filter(({ safety }) => safety).length, 13, 18);
  });

  it('puts at least 1 question in each of the 5 states', () => {
    const states = new Set(items.map(({ state }) => state));
    expect([...states].toSorted()).toEqual(['apart', 'arrival', 'liveOpen', 'loaded', 'untouched']);
  });

  it('has a basis for every item', () => {
    expect(idsOf(items.filter(({ basis }) => basis.length === 0))).toEqual([]);
  });

  it('rests no safety or stop item on memory alone', () => {
    const dangerous = items.filter(({ safety, stop }) => safety || stop);
    expect(idsOf(dangerous.filter(({ basis }) => basis.every(isMemory)))).toEqual([]);
  });

  it('has a short-route item that always applies for every hazard and every zone', () => {
    const always = items.filter(
      ({ route, onlyIf, mayNotApply }) => route === 'short' && onlyIf === undefined && mayNotApply.length === 0,
    );
    expect(idsOf(hazards.filter(({ id }) => !always.some(({ hazard }) => hazard === id)))).toEqual([]);
    expect(idsOf(zones.filter(({ id }) => !always.some(({ zone }) => zone === id)))).toEqual([]);
  });

  it('leaves 0 hazards unused', () => {
    const used = new Set(items.map(({ hazard }) => hazard));
    expect(idsOf(hazards.filter(({ id }) => !used.has(id)))).toEqual([]);
  });

  it('tells the grades of every item apart by words', () => {
    const alike = items.filter((item) => new Set(gradeTexts(item).map(bareWords)).size < gradeTexts(item).length);
    expect(idsOf(alike)).toEqual([]);
  });

  it('offers the grade sound for every item, so that a faultless pack can score 100', () => {
    expect(idsOf(items.filter(({ grades }) => grades.sound === undefined))).toEqual([]);
  });

  it('keeps to phone lengths: ask ≤ 80 characters, grade ≤ 120, title ≤ 30', () => {
    const long = items.flatMap((item) => [
      ...(item.title.length > 30 ? [`${item.id} title ${item.title.length}`] : []),
      ...(item.ask.length > 80 ? [`${item.id} ask ${item.ask.length}`] : []),
      ...gradeTexts(item)
        .filter((text) => text.length > 120)
        .map((text) => `${item.id} grade ${text.length}`),
    ]);
    expect(long).toEqual([]);
  });

  it('uses none of 4 banned words', () => {
    const banned = /\b(audit|violation|template|issue)(s|ed|ing|or|ors)?\b/i;
    expect(stringsIn(builtIn).filter((text) => banned.test(text))).toEqual([]);
    expect('An Audit of issues').toMatch(banned);
  });
});

function isMemory(basis: Basis): boolean {
  return basis.kind === 'source' && basis.sure === 'memory';
}

function gradeTexts({ grades }: Item): string[] {
  return GRADES.flatMap((grade) => grades[grade] ?? []);
}

function bareWords(text: string): string {
  return (
    text
      .toLowerCase()
      .match(/[^\s\p{P}]+/gu)
      ?.join(' ') ?? ''
  );
}

function idsOf(list: readonly { id: string }[]): string[] {
  return list.map(({ id }) => id);
}

function expectWithin(count: number, least: number, most: number): void {
  expect(count).toBeGreaterThanOrEqual(least);
  expect(count).toBeLessThanOrEqual(most);
}
