import type { Drawing, Palette } from '../../drawing/display-list.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import type { Afterwards } from '../../schema/afterwards.ts';
import type { CalloutKind } from '../../schema/callout.ts';
import type { Evidence, Grade } from '../../schema/grade.ts';
import type { MakeSafe } from '../../schema/make-safe.ts';
import type { Nameplate } from '../../schema/nameplate.ts';
import type { LidOffState } from '../../schema/pack-states.ts';
import type { DemoTests } from './live/demo-tests.ts';

/** One invented pack as plain data. Days and minutes count back from the moment it is laid out, so that it never looks old. */
export interface DemoPack {
  /** Fixed, so that laying it out twice makes no second pack. */
  packId: string;
  nameplate: Nameplate;
  daysAgo: { priced: number; received: number; afterwards?: number };
  /** Choice by fact id. */
  facts: Readonly<Record<string, string>>;
  grades: readonly GradeRow[];
  /** Readings typed into an item: value by input id. */
  readings: Readonly<Record<string, Readonly<Record<string, number>>>>;
  tests: DemoTests;
  /** Reason by item id. */
  notSeen: Readonly<Record<string, string>>;
  doesNotApply: Readonly<Record<string, string>>;
  /** The tester's note by item id. */
  notes: Readonly<Record<string, string>>;
  photos: readonly DemoPhoto[];
  makeSafe: Pick<MakeSafe, 'packVoltageV' | 'chargeState' | 'company'> & { minutesAgo: number };
  states: Readonly<Partial<Record<LidOffState, { minutesAgo: number; leftBehind: readonly string[] }>>>;
  words: PackRecord['words'];
  afterwards: Omit<Afterwards, 'on'>;
}

export type GradeRow = readonly [itemId: string, grade: Grade, evidence: Evidence];

export interface DemoPhoto {
  drawing: Drawing;
  palette: Palette;
  zone: string;
  itemIds: readonly string[];
  caption: string;
  callouts?: readonly DemoCallout[];
  /** The photo that Make safe asks for. */
  coveredTerminals?: true;
}

/** Points in units of the drawing. */
export interface DemoCallout {
  kind: CalloutKind;
  points: readonly (readonly [x: number, y: number])[];
  text?: string;
  itemId?: string;
}

/** A photo's bytes are known only once it is painted: what the record has to say of them. */
export interface PaintedFacts {
  sha256: string;
  byteCount: number;
  widthPx: number;
  heightPx: number;
}
