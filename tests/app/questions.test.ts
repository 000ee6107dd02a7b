import { describe, expect, it } from 'vitest';
import { askNext } from '../../src/app/ask-next.ts';
import { cardOf } from '../../src/app/card-of.ts';
import { lostNow } from '../../src/app/lost-now.ts';
import { type Asking, type Question, questionId, questionsOf } from '../../src/app/questions.ts';
import { stopFindings } from '../../src/app/stop-findings.ts';
import { zoneProgress } from '../../src/app/zone-progress.ts';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import { foldRecord } from '../../src/record/fold-record.ts';
import type { Entry } from '../../src/schema/entry.ts';
import { admittedFile } from '../checklists/admitted-file.ts';
import { builtIn } from '../checklists/built-in.ts';

const PACK = '0123456789abcdef0123456789abcdef';
const DEVICE = '1'.repeat(32);

function askingWith(puts: [subject: string, part: string, v: unknown][]) {
  const entries = [['pack', 'made', {}] as const, ...puts].map(
    ([subject, part, v], index): Entry => ({
      key: [PACK, subject, part],
      v,
      at: `000001790000000.${String(index).padStart(6, '0')}.${DEVICE}`,
      by: DEVICE,
    }),
  );
  const record = foldRecord(PACK, entries);
  return { definition: builtIn, record, grading: gradeRecord(builtIn, record) };
}
const grade = (value: string) => ({ kind: 'grade', grade: value, evidence: 'seen' });
const ids = (questions: Question[]) => questions.map(questionId);

describe('what is asked in a state', () => {
  it('at Arrival begins with the facts, then the items of that state alone', () => {
    const questions = questionsOf(askingWith([]), 'arrival');
    const facts = builtIn.facts.filter(({ state }) => state === 'arrival').map(({ id }) => id);
    const items = builtIn.items.filter(({ state }) => state === 'arrival').map(({ id }) => id);
    expect(ids(questions)).toEqual([...facts, ...items]);
    expect(questions.every(({ open }) => open)).toBe(true);
  });

  it('leaves out the lining of a metal wall once the case is said to be of plastic', () => {
    const before = ids(questionsOf(askingWith([]), 'untouched', 'enclosure'));
    const after = ids(questionsOf(askingWith([['fact', 'metal-case', { choice: 'no' }]]), 'untouched', 'enclosure'));
    expect(before).toContain('metal-wall-lining');
    expect(after).toEqual(before.filter((id) => id !== 'metal-wall-lining'));
  });

  it('on the short route asks 5 stop items and no item of the whole route only', () => {
    const asking = askingWith([['pack', 'route', 'short']]);
    const asked = new Set(
      (['arrival', 'loaded', 'untouched', 'liveOpen', 'apart'] as const).flatMap((state) =>
        ids(questionsOf(asking, state)),
      ),
    );
    const wholeOnly = builtIn.items.filter(({ route, id }) => route === 'whole' && asked.has(id));
    expect(wholeOnly).toEqual([]);
    expect(builtIn.items.filter(({ stop, id }) => stop && asked.has(id))).toHaveLength(5);
  });

  it('counts an item with a note alone as open, one not seen as answered', () => {
    const asking = askingWith([
      ['answer', 'cell-vents', { kind: 'open', note: 'look again' }],
      ['answer', 'vent-disc', { kind: 'notSeen', reason: 'No time left' }],
    ]);
    const open = (id: string) => questionsOf(asking, 'untouched', 'vents').find((one) => questionId(one) === id)?.open;
    expect([open('cell-vents'), open('vent-disc')]).toEqual([true, false]);
  });
});

describe('what the live tests settle', () => {
  const claim = ['nameplate', 'continuousCurrentA', 100] as [string, string, unknown];
  const trip = (v: object) =>
    ['trip', PACK, { ...v, made: `000001790000000.000000.${DEVICE}` }] as [string, string, unknown];
  const isOpen = (puts: [string, string, unknown][]) =>
    questionsOf(askingWith(puts), 'loaded').find((one) => questionId(one) === 'overcurrent-cutoff')?.open;

  it('is asked no more: a trip at 200 A after 4 s answers the over-current cutoff of a 100 A pack', () => {
    expect(isOpen([claim])).toBe(true);
    expect(isOpen([claim, trip({ currentA: 200, heldForS: 4, opened: true })])).toBe(false);
    expect(isOpen([claim, trip({ currentA: 120, heldForS: 4, opened: false })])).toBe(true);
  });
});

it('a pack with 1 trip and nothing under the lid stands at Live tests on its card', () => {
  const asking = askingWith([
    ['answer', 'terminal-posts', grade('sound')],
    ['trip', PACK, { currentA: 200, heldForS: 4, opened: true, made: `000001790000000.000000.${DEVICE}` }],
  ]);
  expect(cardOf(asking.record, asking.grading).stage).toBe('liveTests');
});

describe('look here next', () => {
  it('stays within the present state', () => {
    for (const state of ['untouched', 'liveOpen', 'apart'] as const) {
      const next = askNext(askingWith([]), state);
      const question = next?.question;
      expect(question?.kind === 'item' ? question.item.state : question?.fact.state).toBe(state);
    }
  });

  it('is null when every question of the state is answered', () => {
    const live = builtIn.items.filter(({ state }) => state === 'liveOpen');
    const asking = askingWith([
      ['fact', 'cell-joint', { choice: 'bolted' }],
      ['fact', 'data-port', { choice: 'yes' }],
      ...live.map(({ id }): [string, string, unknown] => ['answer', id, grade('sound')]),
    ]);
    expect(askNext(asking, 'liveOpen')).toBeNull();
  });
});

describe('progress of a zone', () => {
  const vents = builtIn.items.filter(({ zone }) => zone === 'vents');

  it('counts what is asked of it in every state, and is not done while 1 question of an earlier state is open', () => {
    const puts = vents.slice(1).map(({ id }): [string, string, unknown] => ['answer', id, grade('sound')]);
    const asking = askingWith([
      ['fact', 'metal-case', { choice: 'yes' }],
      ['fact', 'metal-case-closed', { choice: 'yes' }],
      ...puts,
    ]);
    expect(zoneProgress(asking, 'vents', 'apart')).toEqual({
      answeredCount: vents.length - 1,
      askedCount: vents.length,
      doneSoFar: false,
    });
  });

  it('is done so far when only questions of a later state are open', () => {
    const early = builtIn.items.filter(({ zone, state }) => zone === 'sensors' && state === 'untouched');
    const asking = askingWith([
      ['fact', 'heater-fitted', { choice: 'yes' }],
      ...early.map(({ id }): [string, string, unknown] => ['answer', id, grade('sound')]),
    ]);
    const progress = zoneProgress(asking, 'sensors', 'untouched');
    expect(progress.doneSoFar).toBe(true);
    expect(progress.answeredCount).toBe(early.length + 1);
    expect(progress.askedCount).toBeGreaterThan(progress.answeredCount);
    expect(zoneProgress(asking, 'sensors', 'liveOpen').doneSoFar).toBe(false);
  });
});

describe('before it is disturbed', () => {
  it('names only what goes with the present state, and not what went with an earlier one', () => {
    const asking = askingWith([]);
    const leaving = (state: string) =>
      builtIn.items.filter(({ lastChance }) => lastChance?.leaving === state).map(({ id }) => id);
    expect(lostNow(asking, 'untouched').map(({ itemId }) => itemId)).toEqual(leaving('untouched'));
    expect(lostNow(asking, 'liveOpen').map(({ itemId }) => itemId)).toEqual(leaving('liveOpen'));
    expect(leaving('liveOpen').length).toBeGreaterThan(0);
  });
});

describe('stop findings and the card', () => {
  it('are 1 when a case is split: the score is withheld and the card says stop at both ends', () => {
    const asking = askingWith([['answer', 'case-damage', grade('failed')]]);
    expect(stopFindings(builtIn, asking.grading).map(({ id }) => id)).toEqual(['case-damage']);
    const card = cardOf(asking.record, asking.grading);
    expect(card.score).toBeNull();
    expect(card.verdict).toEqual({ low: 'stop', high: 'stop' });
    expect(card.worst).toBe('failed');
    expect(card.stage).toBe('arrival');
  });

  it('are 0 when the same item is only weak', () => {
    const asking = askingWith([['answer', 'case-damage', grade('weak')]]);
    expect(stopFindings(builtIn, asking.grading)).toEqual([]);
  });

  it('of a zone that Lid off asks nothing of: is done when the closed pack’s questions are, not before', () => {
    const definition = admittedFile('lfp-rack/0.1.0');
    const ports = definition.items.filter(({ zone }) => zone === 'data-ports');
    expect(ports.every(({ state }) => state === 'arrival')).toBe(true);
    const askingBy = (answered: number): Asking => {
      const entries = ports
        .slice(0, answered)
        .map(({ id }) => ['answer', id, grade('sound')] as [string, string, unknown]);
      const { record } = askingWith([['fact', 'sold-for-parallel', { choice: 'yes' }], ...entries]);
      return { definition, record, grading: gradeRecord(definition, record) };
    };
    expect(zoneProgress(askingBy(1), 'data-ports', 'apart').doneSoFar).toBe(false);
    expect(zoneProgress(askingBy(2), 'data-ports', 'untouched').doneSoFar).toBe(true);
  });
});
