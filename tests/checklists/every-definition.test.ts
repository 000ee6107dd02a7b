import { describe, expect, it } from 'vitest';
import type { Basis, Item } from '../../src/schema/checklist.ts';
import { GRADES } from '../../src/schema/grade.ts';
import { admittedFile } from './admitted-file.ts';
import { definitionFiles } from './definition-files.ts';
import { stringsIn } from './strings-in.ts';

/** What is asked of every checklist that comes with the app, whatever it is for; lengths are our choice. */
const NAMES = definitionFiles().map(({ name }) => name);

it('at least 4 checklists come with the app, two of them for different packs', () => {
  expect(NAMES).toEqual(
    expect.arrayContaining(['lfp-drop-in/1.0.0', 'lfp-drop-in/1.1.0', 'lfp-drop-in/1.1.1', 'lfp-rack/0.1.0']),
  );
});

describe.each(NAMES)('%s', (name) => {
  const definition = admittedFile(name);
  const { items, hazards, zones, facts, remedies } = definition;

  it('has the factors k 0.40, 0.70, 0.95, 1 and the credits 1, 0.75, 0.35, 0 of DESIGN §5', () => {
    expect(definition.k).toEqual({ high: 0.4, serious: 0.7, medium: 0.95, low: 1 });
    expect(definition.credits).toEqual({ sound: 1, passable: 0.75, weak: 0.35, failed: 0 });
  });

  it('puts at least 1 question in each of the 5 states', () => {
    const states = new Set(items.map(({ state }) => state));
    expect([...states].toSorted()).toEqual(['apart', 'arrival', 'liveOpen', 'loaded', 'untouched']);
  });

  it('has a basis for every item', () => {
    expect(idsOf(items.filter(({ basis }) => basis.length === 0))).toEqual([]);
  });

  it('rests 0 safety or stop items on memory alone, and gives a reason wherever only a memory is left', () => {
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

  it('leaves 0 hazards unused, and 0 facts without an item that hangs on them or a way of opening', () => {
    const used = new Set(items.map(({ hazard }) => hazard));
    expect(idsOf(hazards.filter(({ id }) => !used.has(id)))).toEqual([]);
    const asked = items.flatMap(({ onlyIf, derive }) => [onlyIf?.fact, derive?.fuseFitted?.fact]);
    // How the lid is held decides no item; it stands on the sheet.
    expect(idsOf(facts.filter(({ id }) => !asked.includes(id))).filter((id) => !/open|heater/.test(id))).toEqual([]);
  });

  it('tells the grades of every item apart by words', () => {
    const alike = items.filter((item) => new Set(gradeTexts(item).map(bareWords)).size < gradeTexts(item).length);
    expect(idsOf(alike)).toEqual([]);
  });

  it('offers the grade sound for every item, so that a faultless pack can score 100', () => {
    expect(idsOf(items.filter(({ grades }) => grades.sound === undefined))).toEqual([]);
  });

  it('keeps to phone lengths: ask ≤ 80 characters, grade ≤ 120, title ≤ 30, zone title ≤ 22', () => {
    const long = [
      ...zones.filter(({ title }) => title.length > 22).map(({ id, title }) => `zone ${id} ${title.length}`),
      ...items.flatMap((item) => [
        ...(item.title.length > 30 ? [`${item.id} title ${item.title.length}`] : []),
        ...(item.ask.length > 80 ? [`${item.id} ask ${item.ask.length}`] : []),
        ...gradeTexts(item)
          .filter((text) => text.length > 120)
          .map((text) => `${item.id} grade ${text.length}`),
      ]),
    ];
    expect(long).toEqual([]);
  });

  it('uses none of 4 banned words', () => {
    const banned = /\b(audit|violation|template|issue)(s|ed|ing|or|ors)?\b/i;
    expect(stringsIn(definition).filter((text) => banned.test(text))).toEqual([]);
    expect('An Audit of issues').toMatch(banned);
  });

  it('works inside a pack only in a workshop: 0 outside remedies speak of cells, lids or inner bars', () => {
    const outside = remedies.filter(({ reach }) => reach === 'outside');
    expect(outside.filter(({ text }) => /cells out|take the stack|between the cans/i.test(text))).toEqual([]);
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
