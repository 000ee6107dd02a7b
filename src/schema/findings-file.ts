import * as v from 'valibot';
import { CALLOUT_KINDS } from './callout.ts';
import { likelihoodSchema, RISK_LEVELS, severitySchema } from './checklist.ts';
import { evidenceSchema, gradeSchema } from './grade.ts';
import { CUT_OFF_KINDS } from './live-tests/cut-off.ts';
import { ROUTES } from './pack-states.ts';
import { sha256Schema } from './text-limits.ts';
import { VERDICTS } from './verdict.ts';

/** Name of the published schema, beside the app; every findings file points at it. */
export const FINDINGS_SCHEMA_NAME = 'findings.schema.json';
export const FINDINGS_FORMAT = 'underlid-findings';
/** Raised when a reader of the earlier one would misread the next. */
export const FINDINGS_FORMAT_VERSION = 1;

const text = v.nullable(v.string());
const figure = v.nullable(v.number());
const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const day = v.pipe(v.string(), v.regex(/^\d{4}-\d\d-\d\d$/));
const range = v.strictObject({ low: v.number(), high: v.number() });
const said = <S extends v.GenericSchema>(schema: S, words: string) => v.pipe(schema, v.description(words));

const madeWithSchema = v.strictObject({
  app: v.literal('Underlid'),
  appVersion: v.string(),
  checklist: v.strictObject({
    id: v.string(),
    version: v.string(),
    title: v.string(),
    status: v.picklist(['draft', 'released']),
    sha256: said(v.string(), 'SHA-256 of the definition file, or of the definition as it was sealed.'),
  }),
});

const sheetSchema = v.strictObject({
  standing: said(
    v.picklist(['open', 'revising', 'closed', 'reopened', 'replaced']),
    'open: never closed. revising: opened again, made of what came after. reopened: as closed, the next revision is in the making. replaced: a later revision counts.',
  ),
  revision: v.nullable(v.pipe(v.number(), v.integer(), v.minValue(1))),
  sha256: said(v.nullable(sha256Schema), 'SHA-256 of the sealed JSON; null where the sheet is not closed.'),
  date: said(v.nullable(day), 'Day of the newest entry the file is made of; null of an empty record.'),
});

const packSchema = v.strictObject({
  packId: v.string(),
  name: text,
  sample: text,
  maker: text,
  model: text,
  serial: text,
  revision: text,
  nominalVoltageV: figure,
  ratedCapacityAh: figure,
});

const disclosureSchema = v.strictObject({
  obtained: v.string(),
  commission: said(text, 'Whether links pay a commission; null where it is not stated.'),
  invented: said(v.boolean(), 'An invented demo: no such pack exists.'),
  line: said(v.string(), 'All of it in one line: it stands beside whatever is made of this file.'),
});

const zoneSchema = v.strictObject({
  id: v.string(),
  title: v.string(),
  weightFrac: said(v.number(), 'Share of Build, 0–1; 0 where no item of the zone can apply.'),
  creditFrac: said(v.nullable(range), 'Share of the zone’s credit, 0–1, at both ends; null where nothing can apply.'),
  askedCount: count,
  settledCount: count,
  worstGrade: v.nullable(gradeSchema),
});

const findingSchema = v.strictObject({
  number: said(v.pipe(v.number(), v.integer(), v.minValue(1)), 'As on the sheet, worst first.'),
  itemId: v.string(),
  title: v.string(),
  zoneId: v.string(),
  grade: gradeSchema,
  sure: said(v.boolean(), 'False where the item may still not apply, or may turn out better.'),
  sentence: said(v.string(), 'The observable words of the grade, from the checklist.'),
  measured: text,
  overruled: said(text, 'Why the tester’s grade counts against what was measured.'),
  hazard: said(
    v.nullable(v.strictObject({ id: v.string(), title: v.string(), harm: v.string() })),
    'Null of a finding that costs credit only.',
  ),
  severity: said(v.nullable(severitySchema), 'MIL-STD-882E Table I, 1 catastrophic to 4 negligible, tailored.'),
  likelihood: said(v.nullable(likelihoodSchema), 'MIL-STD-882E Table II, by a rule from the grade.'),
  risk: said(v.nullable(v.picklist(RISK_LEVELS)), 'MIL-STD-882E Table III.'),
  lostPoints: said(figure, 'Points of Build lost at the low end; null where the score is withheld.'),
  evidence: v.nullable(evidenceSchema),
  note: text,
  photos: v.array(v.strictObject({ number: count, sha256: sha256Schema })),
});

const photoSchema = v.strictObject({
  number: v.pipe(v.number(), v.integer(), v.minValue(1)),
  sha256: said(sha256Schema, 'Of the stored JPEG, before cover-ups are burnt in.'),
  title: v.string(),
  caption: text,
  widthPx: count,
  heightPx: count,
  callouts: said(
    v.array(
      v.strictObject({
        id: v.string(),
        number: said(v.nullable(count), 'Of a leader line; null of kinds that carry none.'),
        kind: v.picklist(CALLOUT_KINDS.filter((kind) => kind !== 'cover')),
        text,
        itemId: text,
        points: said(
          v.array(v.pipe(v.array(v.number()), v.length(2))),
          '0–1 from the left and from the top of the upright picture.',
        ),
      }),
    ),
    'Cover-ups are left out.',
  ),
});

const liveTestsSchema = v.strictObject({
  promised: v.nullable(
    v.strictObject({
      capacityAh: figure,
      energyWh: figure,
      energyFrom: said(
        v.nullable(v.picklist(['claimed', 'computed'])),
        'claimed: as printed. computed: from Ah × V, because no Wh are printed.',
      ),
    }),
  ),
  delivered: v.nullable(
    v.strictObject({
      chargeAh: figure,
      energyWh: figure,
      atLeast: said(v.boolean(), 'No run was complete: the pack may hold more.'),
      chargeShareFrac: figure,
      energyShareFrac: figure,
      chargeUncertaintyAh: said(figure, 'Combined standard uncertainty, k = 1.'),
      energyUncertaintyWh: said(figure, 'Combined standard uncertainty, k = 1.'),
    }),
  ),
  runCount: count,
  completeRunCount: said(v.nullable(count), 'Null where the runs could not be worked out.'),
  cost: v.nullable(
    v.strictObject({
      perKwh: v.number(),
      currency: text,
      price: v.number(),
      pricedOn: v.nullable(day),
      basis: v.picklist(['measured', 'nominalVoltage']),
    }),
  ),
  retention: v.nullable(v.strictObject({ frac: v.number(), gentleA: v.number(), hardA: v.number() })),
  peukertExponent: figure,
  overcurrent: said(
    v.nullable(
      v.strictObject({
        verdict: v.picklist(['tripped', 'heatOnly', 'noneSeen', 'notTested']),
        kinds: v.array(v.picklist(['instant', 'delayed', 'heatOnly'])),
        tripCount: count,
        slowestS: figure,
        slowestAtA: figure,
        heatAtA: figure,
        heatAfterS: figure,
        highestHeldA: figure,
        highestHeldForS: figure,
      }),
    ),
    'Null where no trip was tried, or where `refused` says why.',
  ),
  cutOffs: said(
    v.nullable(
      v.array(
        v.strictObject({
          kind: v.picklist(CUT_OFF_KINDS),
          acted: v.boolean(),
          verdict: said(
            v.nullable(v.picklist(['acted', 'actedLate', 'didNot', 'notTested'])),
            'Null without a limit or a figure to hold it against.',
          ),
          worstCellVoltageV: figure,
          packVoltageV: figure,
          currentA: figure,
          sensorDegC: figure,
        }),
      ),
    ),
    'One for each trial; null where they could not be worked out.',
  ),
  cellSets: said(
    v.nullable(v.array(v.strictObject({ readCount: count, lowV: figure, highV: figure, spreadMv: figure }))),
    'One for each round of readings; null where they could not be worked out.',
  ),
  refused: said(v.array(v.string()), 'Matters that could not be worked out, with the reason.'),
});

/** The findings of one pack as a file for other programs. Nothing in it is rounded; null is "not known". */
export const findingsFileSchema = v.pipe(
  v.strictObject({
    $schema: v.literal(FINDINGS_SCHEMA_NAME),
    format: v.literal(FINDINGS_FORMAT),
    formatVersion: v.literal(FINDINGS_FORMAT_VERSION),
    madeWith: madeWithSchema,
    disclosure: disclosureSchema,
    caution: said(v.string(), 'One sample, as found; no certification.'),
    sheet: sheetSchema,
    pack: packSchema,
    route: said(v.picklist(ROUTES), 'A short route is never ranked against a whole one.'),
    askedCount: count,
    itemCount: count,
    settledCount: count,
    verdict: v.strictObject({
      low: v.picklist(VERDICTS),
      high: v.picklist(VERDICTS),
      settled: v.boolean(),
      title: v.string(),
      line: v.string(),
    }),
    stop: said(v.picklist(['none', 'possible', 'failed']), 'failed: a stop sign was found and the score is withheld.'),
    settled: v.boolean(),
    settledShareFrac: v.number(),
    score: said(v.nullable(range), '0–100; null where it is withheld or nothing can apply.'),
    build: said(v.nullable(range), '0–100.'),
    factor: said(v.nullable(range), '0–1.'),
    after: said(
      v.strictObject({ outside: v.nullable(range), workshop: v.nullable(range) }),
      'Scores after the listed remedies from outside, and after all.',
    ),
    zones: v.array(zoneSchema),
    findings: v.array(findingSchema),
    photos: v.array(photoSchema),
    liveTests: liveTestsSchema,
  }),
  v.title('Underlid findings'),
  v.description(
    'The findings of one battery pack, never rounded. Null is not known, never zero. Units are in the names.',
  ),
);
export type FindingsFile = v.InferOutput<typeof findingsFileSchema>;
