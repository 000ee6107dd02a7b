import type { CalloutKind, ImagePoint } from '../../schema/callout.ts';

/** A callout while it is edited. A stored one brings its `made` and gives it back; a new one has none yet. */
export interface EditedCallout {
  id: string;
  photoId: string;
  kind: CalloutKind;
  points: ImagePoint[];
  text?: string | undefined;
  itemId?: string | undefined;
  made?: string | undefined;
}

/** One visit to a photo: its callouts in the order in which they were made, and what can be taken back and redone. */
export interface Editing {
  callouts: readonly EditedCallout[];
  past: readonly Step[];
  future: readonly Step[];
}

interface Step {
  id: string;
  /** Place in the order, so that a callout that comes back has its old number. */
  place: number;
  before: EditedCallout | null;
  after: EditedCallout | null;
  /** Steps that follow each other under the same name are one to undo: letters typed into one box. */
  joins: string | null;
}

/** What has to be stored after an edit. */
export type CalloutWrite = { kind: 'put'; callout: EditedCallout } | { kind: 'remove'; id: string };
export interface Edit {
  editing: Editing;
  write: CalloutWrite;
}

export function beginEditing(callouts: readonly EditedCallout[]): Editing {
  return { callouts, past: [], future: [] };
}

/** Adds a callout at the end or replaces the one of the same id. */
export function putCallout(editing: Editing, callout: EditedCallout, joins: string | null = null): Edit {
  const found = editing.callouts.findIndex((one) => one.id === callout.id);
  const place = found < 0 ? editing.callouts.length : found;
  return take(editing, { id: callout.id, place, before: editing.callouts[place] ?? null, after: callout, joins });
}

/** Null when there is no such callout. */
export function removeCallout(editing: Editing, id: string): Edit | null {
  const place = editing.callouts.findIndex((one) => one.id === id);
  const before = editing.callouts[place];
  return before === undefined ? null : take(editing, { id, place, before, after: null, joins: null });
}

export function undo(editing: Editing): Edit | null {
  const step = editing.past.at(-1);
  if (step === undefined) return null;
  return {
    editing: {
      callouts: settled(editing.callouts, step, step.before),
      past: editing.past.slice(0, -1),
      future: [...editing.future, step],
    },
    write: writeOf(step.id, step.before),
  };
}

export function redo(editing: Editing): Edit | null {
  const step = editing.future.at(-1);
  if (step === undefined) return null;
  return {
    editing: {
      callouts: settled(editing.callouts, step, step.after),
      past: [...editing.past, step],
      future: editing.future.slice(0, -1),
    },
    write: writeOf(step.id, step.after),
  };
}

/** Numbers of the leaders of a photo: 1, 2, 3 … in the order in which they were made. */
export function leaderNumbers(callouts: readonly EditedCallout[]): ReadonlyMap<string, number> {
  const leaders = callouts.filter((callout) => callout.kind === 'leader');
  return new Map(leaders.map((leader, place) => [leader.id, place + 1]));
}

function take(editing: Editing, step: Step): Edit {
  const last = editing.past.at(-1);
  const joined = last !== undefined && step.joins !== null && last.joins === step.joins && last.id === step.id;
  const past = joined ? [...editing.past.slice(0, -1), { ...step, before: last.before }] : [...editing.past, step];
  return {
    editing: { callouts: settled(editing.callouts, step, step.after), past, future: [] },
    write: writeOf(step.id, step.after),
  };
}

function settled(callouts: readonly EditedCallout[], step: Step, callout: EditedCallout | null): EditedCallout[] {
  const others = callouts.filter((one) => one.id !== step.id);
  return callout === null ? others : [...others.slice(0, step.place), callout, ...others.slice(step.place)];
}

function writeOf(id: string, callout: EditedCallout | null): CalloutWrite {
  return callout === null ? { kind: 'remove', id } : { kind: 'put', callout };
}
