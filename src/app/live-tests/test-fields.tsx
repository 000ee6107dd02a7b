import type { ComponentChildren } from 'preact';
import { localDay } from '../../text/format-day.ts';
import { editingWords as say } from '../../text/live-tests/editing.ts';
import { DayField } from '../../ui/fields/day-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { nowMs, utcOffsetMinutes } from '../clock.ts';
import { InstrumentPicker } from './instrument-picker.tsx';
import type { openTest } from './open-test.ts';
import { TestBox } from './test-box.tsx';
import type { FieldGroup, OneByOne, TestContext, TestField, TestKind, TestValue } from './test-kind.ts';

interface TestFieldsProps<S extends OneByOne> {
  kind: TestKind<S>;
  test: ReturnType<typeof openTest<S>>;
  context: TestContext;
  /** Pack and test. */
  owner: string;
  /** Stands between the boxes of the kind and day, instrument and note. */
  children?: ComponentChildren;
}

/** All boxes of a test in the order in which they are filled in; day, instrument and note last. */
export function TestFields<S extends OneByOne>({ kind, test, context, owner, children }: TestFieldsProps<S>) {
  const { value } = test;
  const standard: { on?: string; instrumentId?: string; note?: string } = value;
  const { day = true, instrument = true } = kind.standard ?? {};
  return (
    <>
      {kind.groups.map((group, place) => (
        <Group key={place} group={group} kind={kind} test={test} context={context} owner={owner} />
      ))}
      {children}
      <section class="stack">
        {instrument && (
          <InstrumentPicker
            instruments={context.tests.instruments}
            chosen={standard.instrumentId ?? null}
            onChoose={(id, also) => void test.change('instrumentId', id, also)}
          />
        )}
        {day && (
          <DayField
            id="test-on"
            label={say.standard.on}
            value={standard.on ?? (Object.keys(value).length === 0 ? today() : '')}
            onChange={(on) => void test.change('on', on)}
          />
        )}
        <TextField
          id="test-note"
          label={say.standard.note}
          value={standard.note ?? ''}
          maxLength={2000}
          lines="many"
          onChange={(note) => void test.change('note', note)}
        />
      </section>
    </>
  );
}

function Group<S extends OneByOne>({
  group,
  kind,
  test,
  context,
  owner,
}: TestFieldsProps<S> & { group: FieldGroup<TestValue<S>> }) {
  const { value } = test;
  const shown = group.fields.filter((field) => isAsked(field, value));
  const notices = group.notices?.(value, context) ?? [];
  if (shown.length === 0) return null;
  return (
    <section class="stack">
      {group.title !== undefined && <h2>{group.title}</h2>}
      {group.lead !== undefined && <p class="small muted">{group.lead}</p>}
      {rowsOf(shown).map((row) => (
        <div key={row.map(({ key }) => key).join()} class={row.length > 1 ? 'pair' : 'stack'}>
          {row.map((field) => (
            <div key={field.key} class="stack">
              <TestBox
                kind={kind}
                field={field}
                value={value}
                owner={owner}
                units={context.units}
                onChange={(next) => void test.change(field.key, next)}
              />
              {field.hint !== undefined && <p class="small muted">{field.hint}</p>}
            </div>
          ))}
        </div>
      ))}
      <div class="stack" aria-live="polite">
        {notices.map((notice) => (
          <p key={notice} class="notice calm small">
            {notice}
          </p>
        ))}
      </div>
    </section>
  );
}

/** What holds something is never hidden, whatever was chosen since. */
function isAsked<V>(field: TestField<V>, value: V): boolean {
  return (field.when?.(value) ?? true) || value[field.key as keyof V] !== undefined;
}

/** Numbers that follow one another stand side by side. */
function rowsOf<V>(fields: readonly TestField<V>[]): TestField<V>[][] {
  const rows: TestField<V>[][] = [];
  for (const field of fields) {
    const last = rows.at(-1);
    if (last?.every(isNarrow) && isNarrow(field)) last.push(field);
    else rows.push([field]);
  }
  return rows;
}

function isNarrow<V>({ box }: TestField<V>): boolean {
  return box === 'number' || box === 'temperature' || box === 'length';
}

function today(): string {
  return localDay(nowMs.value, utcOffsetMinutes(nowMs.value));
}
