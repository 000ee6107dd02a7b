import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  beginEditing,
  type Edit,
  type EditedCallout,
  type Editing,
  leaderNumbers,
  putCallout,
  redo,
  removeCallout,
  undo,
} from '../../../src/ui/callouts/editing.ts';

const leader = (id: string, change: Partial<EditedCallout> = {}): EditedCallout => ({
  id,
  photoId: 'p',
  kind: 'leader',
  points: [
    [0.5, 0.5],
    [0.2, 0.2],
  ],
  ...change,
});
const begun = (...ids: string[]) => beginEditing(ids.map((id) => leader(id, { made: `made ${id}` })));
const ids = (editing: Editing) => editing.callouts.map((callout) => callout.id);
const done = (edit: Edit | null): Edit => {
  if (edit === null) throw new Error('no edit');
  return edit;
};

describe('editing', () => {
  it('adds a callout at the end and asks for it to be stored', () => {
    const { editing, write } = putCallout(begun('a', 'b'), leader('c'));
    expect(ids(editing)).toEqual(['a', 'b', 'c']);
    expect(write).toEqual({ kind: 'put', callout: leader('c') });
  });

  it('changes a callout in its place, keeping its number', () => {
    const { editing } = putCallout(begun('a', 'b'), leader('a', { text: 'strip' }));
    expect(ids(editing)).toEqual(['a', 'b']);
    expect(leaderNumbers(editing.callouts).get('a')).toBe(1);
  });

  it('undoes a new callout by removing it, and redoes it', () => {
    const added = putCallout(begun('a'), leader('b')).editing;
    const back = done(undo(added));
    expect(ids(back.editing)).toEqual(['a']);
    expect(back.write).toEqual({ kind: 'remove', id: 'b' });
    const again = done(redo(back.editing));
    expect(ids(again.editing)).toEqual(['a', 'b']);
    expect(again.write).toEqual({ kind: 'put', callout: leader('b') });
  });

  it('brings a removed callout back to its place with its old number 1 and its old `made`', () => {
    const removed = done(removeCallout(begun('a', 'b'), 'a'));
    expect(leaderNumbers(removed.editing.callouts).get('b')).toBe(1);
    const { editing, write } = done(undo(removed.editing));
    expect(ids(editing)).toEqual(['a', 'b']);
    expect(write).toEqual({ kind: 'put', callout: leader('a', { made: 'made a' }) });
  });

  it('takes three letters typed into one box back in one step', () => {
    let editing = begun('a');
    for (const text of ['s', 'st', 'str']) editing = putCallout(editing, leader('a', { text }), 'words').editing;
    expect(editing.past).toHaveLength(1);
    expect(done(undo(editing)).editing.callouts[0]?.text).toBeUndefined();
  });

  it('keeps letters and a move apart, and letters in two boxes', () => {
    const typed = putCallout(begun('a', 'b'), leader('a', { text: 's' }), 'words').editing;
    const moved = putCallout(typed, leader('a', { text: 's', points: [[0, 0]] })).editing;
    const typedMore = putCallout(moved, leader('a', { text: 'st', points: [[0, 0]] }), 'words').editing;
    expect(putCallout(typedMore, leader('b', { text: 'x' }), 'words').editing.past).toHaveLength(4);
  });

  it('forgets what could be redone once something else is drawn', () => {
    const back = done(undo(putCallout(begun(), leader('a')).editing)).editing;
    expect(back.future).toHaveLength(1);
    expect(redo(putCallout(back, leader('b')).editing)).toBeNull();
  });

  it('has nothing to undo, redo or remove in a visit that has just begun', () => {
    expect(undo(begun('a'))).toBeNull();
    expect(redo(begun('a'))).toBeNull();
    expect(removeCallout(begun('a'), 'z')).toBeNull();
  });

  it('numbers leaders only', () => {
    const mixed = [leader('a'), leader('b', { kind: 'cover' }), leader('c')];
    expect([...leaderNumbers(mixed)]).toEqual([
      ['a', 1],
      ['c', 2],
    ]);
  });

  it('comes back to the beginning when everything is undone, and to the end when all is redone, for any visit', () => {
    const act = fc.record({ id: fc.constantFrom('a', 'b', 'c', 'd'), gone: fc.boolean(), text: fc.string() });
    fc.assert(
      fc.property(fc.array(act, { maxLength: 20 }), (acts) => {
        const start = begun('a', 'b');
        let editing = start;
        for (const { id, gone, text } of acts) {
          editing = (gone ? removeCallout(editing, id) : putCallout(editing, leader(id, { text })))?.editing ?? editing;
        }
        const end = editing.callouts;
        for (let edit = undo(editing); edit !== null; edit = undo(editing)) editing = edit.editing;
        expect(editing.callouts).toEqual(start.callouts);
        for (let edit = redo(editing); edit !== null; edit = redo(editing)) editing = edit.editing;
        expect(editing.callouts).toEqual(end);
      }),
      { seed: 11 },
    );
  });
});
