import type { Put } from '../../storage/store.ts';
import { localDay } from '../../text/format-day.ts';
import { editingWords as say } from '../../text/live-tests/editing.ts';
import { utcOffsetMinutes } from '../clock.ts';
import type { PackSession } from '../state/pack-session.ts';
import { isProvisional } from '../state/provisional.ts';
import { type FilledIn, isStorable, missingFields, withField } from './storable-test.ts';
import type { OneByOne, StoredTest, TestKind, TestValue } from './test-kind.ts';
import { keepUnfinished, unfinishedTests } from './unfinished.ts';

/**
 * One test on the screen. It becomes an entry as soon as it holds what its schema asks for, and is written anew with
 * every field changed; until then it waits among the unfinished. Always read afresh, so that no change is lost to one
 * that came just before it.
 */
export function openTest<S extends OneByOne>(session: PackSession, kind: TestKind<S>, id: string) {
  const { packId } = session;
  const place = { packId, kindId: kind.id, id };
  const stored = (): StoredTest<S> | undefined =>
    kind.testsOf(session.record.value.tests).find((test) => test.id === id);
  const filledIn = (): FilledIn => {
    const found = stored();
    if (!found) return unfinishedTests(packId, kind.id).value[id] ?? {};
    const { id: _id, made: _made, ...fields } = found as StoredTest<OneByOne>;
    return fields;
  };

  return {
    get stored() {
      return stored();
    },
    get value(): TestValue<S> {
      return filledIn() as TestValue<S>;
    },
    /** Begun and not yet an entry. */
    get unfinished(): boolean {
      return stored() === undefined && Object.keys(filledIn()).length > 0;
    },
    /** Names of the fields that are still needed. */
    get missing(): string[] {
      const labels: Readonly<Record<string, string>> = kind.labels;
      return missingFields(kind.subject, filledIn()).map((key) => labels[key] ?? key);
    },
    /** Changes one field; null empties it. `also` is written in the same transaction. */
    async change(key: string, value: unknown, also: readonly Put[] = []): Promise<void> {
      const found = stored();
      const before = filledIn();
      // A test is of today unless the tester says otherwise; the box shows it.
      const base = found || Object.keys(before).length > 0 || kind.standard?.day === false ? before : todays();
      const next = withField(base, key, value);
      const undoLabel = say.changed(kind.words.one, labelOf(kind, key));
      if (isStorable(kind.subject, next)) {
        const made = found && !isProvisional(found.made) ? found.made : null;
        const put: Put = { subject: kind.subject, part: id, v: { ...next, made } };
        const saved = await session.put({ puts: [...also, put], undoLabel });
        if (saved) keepUnfinished(place, null);
        return;
      }
      if (found) return;
      keepUnfinished(place, onlyADay(next) ? null : next);
      if (also.length > 0) await session.put({ puts: [...also], undoLabel });
    },
    async remove(): Promise<void> {
      const found = stored();
      keepUnfinished(place, null);
      if (!found) return;
      const others = kind.deletedWith?.(found) ?? [];
      const puts = [{ subject: kind.subject, part: id }, ...others].map((key): Put => ({ ...key, gone: true }));
      await session.put({ puts, undoLabel: say.deleted(kind.words.one) });
    },
  };
}

function todays(): FilledIn {
  const atMs = Date.now();
  return { on: localDay(atMs, utcOffsetMinutes(atMs)) };
}

/** A day alone is no test begun: nobody typed it. */
function onlyADay(test: FilledIn): boolean {
  return Object.keys(test).every((key) => key === 'on');
}

function labelOf<S extends OneByOne>(kind: TestKind<S>, key: string): string {
  const labels: Readonly<Record<string, string>> = { ...kind.labels, ...say.standard };
  return labels[key] ?? key;
}
