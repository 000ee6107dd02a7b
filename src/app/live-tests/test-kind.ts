import type { ComponentType } from 'preact';
import type * as v from 'valibot';
import type { LIVE_TEST_SUBJECTS, LiveTestSubject, LiveTests } from '../../schema/live-tests/live-tests.ts';
import type { LiveContext } from '../../sheet/model/live-tests/live-context.ts';
import type { Block } from '../../sheet/model/sheet.ts';
import type { PackSession } from '../state/pack-session.ts';

/**
 * A kind of test that is written down one entry at a time: what is asked, in the order in which a person at the bench
 * fills it in, and how one test reads in a line. A file per kind in `kinds/`, words in `text/live-tests/`; listed in
 * `live-test-parts.ts` through `oneByOne(kind)`.
 */
export interface TestKind<S extends OneByOne> {
  /** Its address: `live-test/<id>`. */
  id: string;
  subject: S;
  words: KindWords;
  labels: Readonly<Record<keyof Asked<S>, string>>;
  /** Those of the record that are of this kind, in the order in which they were made. */
  testsOf(tests: LiveTests): readonly StoredTest<S>[];
  groups: readonly FieldGroup<TestValue<S>>[];
  /** One test in a line, as far as it is filled in. Empty where nothing is. */
  summary(test: TestValue<S>, context: TestContext): string;
  /** What the test on the screen comes to, beneath its fields; null: what all of them come to, beneath the list. */
  results?(context: TestContext, id: string | null): readonly Block[];
  /** Beneath the kind's own fields of one stored test: what needs a screen part of its own. */
  Below?: ComponentType<{ session: PackSession; id: string }>;
  /** Beneath the list: what this kind can do as a whole. */
  BelowList?: ComponentType<{ session: PackSession }>;
  /** Other entries that are deleted with a test. */
  deletedWith?(test: StoredTest<S>): readonly { subject: LiveTestSubject; part: string }[];
  /** Cells have no day and no instrument of their own. */
  standard?: { day?: boolean; instrument?: boolean };
}

export interface KindWords {
  /** "Over-current trips". */
  title: string;
  /** "Trip". */
  one: string;
  lead: string;
  /** Said before the test, every time. Short. Empty where nothing can hurt. */
  cautions: readonly string[];
}

/** Fields that belong together; numbers side by side, choices across. */
export interface FieldGroup<V> {
  title?: string;
  lead?: string;
  fields: readonly TestField<V>[];
  /** Calm words on what was typed, beneath the group. */
  notices?(value: V, context: TestContext): readonly string[];
}

export type TestField<V> = FieldBox<V> & {
  /** Asked only then; a field that holds something is always shown. */
  when?(value: V): boolean;
  /** A name that follows what was chosen above, in place of the kind's label. */
  label?(value: V): string;
  hint?: string;
};

type FieldBox<V> =
  | NumberBox<V>
  /** Stored in °C or mm, typed in the units of the phone. */
  | { box: 'temperature' | 'length'; key: KeyOf<V, number> }
  | ChoiceBox<V>
  /** Can be left open. */
  | { box: 'yesNo'; key: KeyOf<V, boolean>; yes?: string; no?: string }
  | {
      box: 'text';
      key: KeyOf<V, string>;
      offers?: readonly string[];
      /** Brings what was typed into the form in which it is stored. */
      tidy?(text: string): string;
      /** Said of what the schema refuses. */
      wrong?: string;
    };

export interface NumberBox<V> {
  box: 'number';
  key: KeyOf<V, number>;
  /** As shown. */
  unit: string;
  /** The least that makes sense; what the schema refuses is refused in any case. */
  least: 'aboveZero' | 'zero' | 'any';
  whole?: boolean;
  /** So many of the stored unit make one of the unit shown: 3600 for hours of a value kept in seconds. */
  storedPerShown?: number;
}

type ChoiceBox<V> = {
  [K in KeyOf<V, string>]: {
    box: 'choice';
    key: K;
    choices: readonly { id: NonNullable<V[K]>; text: string }[];
  };
}[KeyOf<V, string>];

/** What the words of a test may rest on beside the test itself: the same as on the sheet. */
export type TestContext = LiveContext;

/** Subjects that stand alone under a random id. */
export type OneByOne = Exclude<LiveTestSubject, 'log' | 'sensorGate' | 'cell' | 'parallelShare'>;

/** Fields named by the schema; those of a newer version, which it lets through, have no box. */
type Known<T> = { [K in keyof T as string extends K ? never : K]: T[K] };
type Output<S extends OneByOne> = Known<v.InferOutput<(typeof LIVE_TEST_SUBJECTS)[S]['value']>>;

export type StoredTest<S extends OneByOne> = Output<S> & { id: string };
/** As far as it is filled in. */
export type TestValue<S extends OneByOne> = Partial<Omit<Output<S>, 'made'>>;
/** The fields a kind asks itself: day, instrument and note are the same for all. */
type Asked<S extends OneByOne> = Omit<TestValue<S>, 'on' | 'instrumentId' | 'note'>;

export type KeyOf<V, T> = { [K in keyof V]-?: NonNullable<V[K]> extends T ? K : never }[keyof V] & string;
