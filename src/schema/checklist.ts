import * as v from 'valibot';
import { DERIVATIONS, type DerivationName, MEASURES, type MeasureName } from './figures.ts';
import { gradeSchema } from './grade.ts';
import { PACK_STATES, ROUTES } from './pack-states.ts';
import { idSchema as anyIdSchema, lineSchema, sentenceSchema } from './text-limits.ts';

/**
 * Shape of a checklist definition file. What the shape alone cannot say (references, order of credits, short route …)
 * is in check-definition.ts.
 */

/**
 * Our choice: a sealed sheet has paths that hold two ids, and names in a file may have 200 letters (plain-json.ts). A
 * sheet with longer ones could be closed, but neither rechecked nor restored.
 */
const MAX_ID = 60;
const idSchema = v.pipe(anyIdSchema, v.maxLength(MAX_ID));

/** MIL-STD-882E Table I categories, 1 catastrophic … 4 negligible, tailored as DESIGN §5 says. */
export const severitySchema = v.picklist([1, 2, 3, 4]);
export type Severity = v.InferOutput<typeof severitySchema>;
/** MIL-STD-882E Table II levels that a grade can lead to. */
export const likelihoodSchema = v.picklist(['A', 'B', 'C', 'D', 'E']);
export type Likelihood = v.InferOutput<typeof likelihoodSchema>;
export const RISK_LEVELS = ['high', 'serious', 'medium', 'low'] as const;
export type RiskLevel = (typeof RISK_LEVELS)[number];

/** Where a criterion comes from. A clause known only from memory is never printed as the basis of a fault. */
const basisSchema = v.variant('kind', [
  v.strictObject({
    kind: v.literal('source'),
    /** Title and section, e.g. "33 CFR 183.445(a)". */
    source: lineSchema,
    sure: v.picklist(['primary', 'secondary', 'memory']),
    /** How it bears on a pack where it is not a rule for one: "analogy". */
    bears: v.optional(lineSchema),
  }),
  v.strictObject({ kind: v.literal('commonPractice') }),
  v.strictObject({ kind: v.literal('ourChoice'), because: sentenceSchema }),
]);
export type Basis = v.InferOutput<typeof basisSchema>;

const onlyIfSchema = v.strictObject({ fact: idSchema, is: idSchema });

const zoneSchema = v.strictObject({ id: idSchema, title: lineSchema, weight: v.pipe(v.number(), v.minValue(0.01)) });
const hazardSchema = v.strictObject({ id: idSchema, title: lineSchema, harm: sentenceSchema });

const factSchema = v.strictObject({
  id: idSchema,
  /** Zone under which Lid off asks it; none for facts asked at arrival. */
  zone: v.optional(idSchema),
  state: v.picklist(PACK_STATES),
  ask: sentenceSchema,
  look: v.optional(sentenceSchema),
  choices: v.pipe(v.array(v.strictObject({ id: idSchema, text: lineSchema })), v.minLength(2), v.maxLength(6)),
});

const gradesSchema = v.strictObject({
  sound: v.optional(sentenceSchema),
  passable: v.optional(sentenceSchema),
  weak: v.optional(sentenceSchema),
  failed: v.optional(sentenceSchema),
});

/** A likelihood that differs from the rule (weak D, failed C, failed on a safety item B), with the reason. */
const likelihoodRuleSchema = v.strictObject({
  passable: v.optional(likelihoodSchema),
  weak: v.optional(likelihoodSchema),
  failed: v.optional(likelihoodSchema),
  because: sentenceSchema,
});

const limitSchema = v.number();

/** Figures inside all the limits given have this grade. The last band of a case has no limits: it takes the rest. */
const bandSchema = v.strictObject({
  grade: gradeSchema,
  from: v.optional(limitSchema),
  over: v.optional(limitSchema),
  upTo: v.optional(limitSchema),
  under: v.optional(limitSchema),
});
export type Band = v.InferOutput<typeof bandSchema>;

/** By case, bands from best to worst; the first that holds counts. */
const bandsSchema = v.record(v.string(), v.pipe(v.array(bandSchema), v.minLength(1), v.maxLength(8)));
export type Bands = v.InferOutput<typeof bandsSchema>;

const inputSchema = v.strictObject({
  id: idSchema,
  title: lineSchema,
  unit: v.picklist(['V', 'mV', 'A', 'mA', 'Ah', '°C', 'mm', 'mΩ', 'Ω', 'cells']),
  /** What a person could have read; anything else is refused with these two named. */
  least: limitSchema,
  most: limitSchema,
});
export type MeasureInput = v.InferOutput<typeof inputSchema>;

/** Values typed into the item → figure → bands → grade. */
const measureSchema = v.strictObject({
  inputs: v.pipe(v.array(inputSchema), v.minLength(1), v.maxLength(4)),
  figure: v.picklist(Object.keys(MEASURES) as MeasureName[]),
  /** Unit in which the figure is shown and banded. */
  unit: v.pipe(v.string(), v.maxLength(12)),
  bands: bandsSchema,
});

/** Live tests → figure → bands → grade; a person may overrule with a reason. */
const deriveSchema = v.strictObject({
  from: v.picklist(Object.keys(DERIVATIONS) as DerivationName[]),
  bands: bandsSchema,
  /** Only for `overCurrent`: the fact that says a fuse is fitted inside, which then may open what nothing else did. */
  fuseFitted: v.optional(onlyIfSchema),
});

const itemSchema = v.strictObject({
  id: idSchema,
  zone: idSchema,
  /** `look`: choose a sentence. `measure`: type values. `derive`: the live tests say. */
  kind: v.picklist(['look', 'measure', 'derive']),
  measure: v.optional(measureSchema),
  derive: v.optional(deriveSchema),
  state: v.picklist(PACK_STATES),
  route: v.picklist(ROUTES),
  weight: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(5)),
  safety: v.optional(v.boolean(), false),
  stop: v.optional(v.boolean(), false),
  /** Short name for lists and the ledger, e.g. "Cell vents". */
  title: lineSchema,
  ask: sentenceSchema,
  look: sentenceSchema,
  why: sentenceSchema,
  grades: gradesSchema,
  hazard: v.optional(idSchema),
  severity: v.optional(severitySchema),
  likelihood: v.optional(likelihoodRuleSchema),
  /** `fault`: a photo is expected with a weak or failed grade. `always`: with any grade. */
  photo: v.optional(v.picklist(['none', 'fault', 'always']), 'fault'),
  onlyIf: v.optional(onlyIfSchema),
  /** Reasons offered for "does not apply". Empty for safety and stop items: there only a fact decides. */
  mayNotApply: v.optional(v.array(lineSchema), []),
  /** What is lost when the pack is taken past a state: said in "Before you disturb it". */
  lastChance: v.optional(v.strictObject({ leaving: v.picklist(['untouched', 'liveOpen']), lost: sentenceSchema })),
  basis: v.pipe(v.array(basisSchema), v.minLength(1)),
});
export type Item = v.InferOutput<typeof itemSchema>;

const remedyMinutes = v.pipe(v.number(), v.minValue(0), v.maxValue(100_000));

const remedySchema = v.strictObject({
  id: idSchema,
  text: sentenceSchema,
  reach: v.picklist(['outside', 'workshop']),
  settles: v.pipe(v.array(v.strictObject({ item: idSchema, leaves: gradeSchema })), v.minLength(1)),
  needs: v.optional(v.literal('fuseFits')),
  /** What it takes, as far as a checklist can say it: materials, and working time of one practised person. */
  parts: v.optional(lineSchema),
  timeMin: v.optional(v.strictObject({ from: remedyMinutes, to: remedyMinutes })),
});
export type Remedy = v.InferOutput<typeof remedySchema>;

export const checklistSchema = v.strictObject({
  $schema: v.optional(v.string()),
  id: idSchema,
  version: v.pipe(v.string(), v.regex(/^\d+\.\d+\.\d+$/, 'must be major.minor.patch')),
  status: v.picklist(['draft', 'released']),
  title: lineSchema,
  fits: sentenceSchema,
  zones: v.pipe(v.array(zoneSchema), v.minLength(1), v.maxLength(12)),
  hazards: v.pipe(v.array(hazardSchema), v.maxLength(40)),
  /** Share of Build that each risk level leaves. */
  k: v.strictObject({ high: v.number(), serious: v.number(), medium: v.number(), low: v.number() }),
  /** Share of an item's weight that each grade earns. */
  credits: v.optional(
    v.strictObject({ sound: v.number(), passable: v.number(), weak: v.number(), failed: v.number() }),
    { sound: 1, passable: 0.75, weak: 0.35, failed: 0 },
  ),
  facts: v.pipe(v.array(factSchema), v.maxLength(40)),
  items: v.pipe(v.array(itemSchema), v.minLength(1), v.maxLength(200)),
  remedies: v.pipe(v.array(remedySchema), v.maxLength(80)),
});
/** A definition as the engine sees it: defaults filled in. */
export type Checklist = v.InferOutput<typeof checklistSchema>;
export type Zone = Checklist['zones'][number];
export type Hazard = Checklist['hazards'][number];
export type Fact = Checklist['facts'][number];
