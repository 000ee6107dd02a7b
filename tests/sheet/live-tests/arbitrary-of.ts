import * as fc from 'fast-check';
import * as v from 'valibot';

/** What is read of a schema of valibot: its kind, its parts, and the actions of its pipe. */
interface Shape {
  type: string;
  entries?: Record<string, Shape>;
  wrapped?: Shape;
  item?: Shape;
  items?: Shape[];
  options?: unknown[];
  pipe?: { type: string; requirement?: unknown }[];
}

/** How large numbers get where the shape does not say. */
export interface Reach {
  /** Smaller ones are 0, or are not made. */
  least: number;
  most: number;
}

/**
 * Any value of a stored shape, built by walking the shape itself, so that a field added to it is tried without being
 * named here. Only values that pass the schema come out.
 */
export function arbitraryOf<S extends v.GenericSchema>(schema: S, reach: Reach): fc.Arbitrary<v.InferOutput<S>> {
  return walk(schema as unknown as Shape, reach).filter((value): value is v.InferOutput<S> => v.is(schema, value));
}

function walk(shape: Shape, reach: Reach): fc.Arbitrary<unknown> {
  switch (shape.type) {
    case 'loose_object':
    case 'strict_object':
    case 'object':
      return objectOf(shape.entries ?? {}, reach);
    case 'optional':
      return walk(inner(shape), reach);
    case 'nullable':
      return fc.option(walk(inner(shape), reach), { nil: null, freq: 4 });
    case 'array':
      return fc.array(walk(shape.item ?? missing('item'), reach), { maxLength: 12 });
    case 'strict_tuple':
      return fc.tuple(...(shape.items ?? []).map((item) => walk(item, reach)));
    case 'picklist':
      return fc.constantFrom(...(shape.options ?? []));
    case 'boolean':
      return fc.boolean();
    case 'number':
      return numberOf(shape, reach);
    case 'string':
      return stringOf(shape);
    default:
      throw new RangeError(`arbitraryOf: no arbitrary for a schema of type ${shape.type}`);
  }
}

function objectOf(entries: Record<string, Shape>, reach: Reach): fc.Arbitrary<unknown> {
  const required = Object.keys(entries).filter((key) => entries[key]?.type !== 'optional');
  const model = Object.fromEntries(Object.entries(entries).map(([key, shape]) => [key, walk(shape, reach)]));
  return fc.record(model, { requiredKeys: required });
}

/** Limits of every pipe on the way: a refined schema holds the one it refines as its first part. */
function actionsOf(shape: Shape): { type: string; requirement?: unknown }[] {
  return (shape.pipe ?? []).flatMap((part) =>
    'pipe' in part && part !== (shape as unknown) ? actionsOf(part as Shape) : [part],
  );
}

function numberOf(shape: Shape, reach: Reach): fc.Arbitrary<number> {
  const actions = actionsOf(shape);
  const limit = (type: string) =>
    actions.flatMap((action) =>
      action.type === type && typeof action.requirement === 'number' ? [action.requirement] : [],
    );
  const isWhole = actions.some((action) => action.type === 'integer' || action.type === 'safe_integer');
  const isAboveZero = limit('gt_value').includes(0);
  const low = Math.max(-reach.most, ...limit('min_value'), ...(isAboveZero ? [reach.least] : []));
  const high = Math.min(reach.most, ...limit('max_value'));
  if (isWhole) return fc.integer({ min: Math.ceil(low), max: Math.min(Math.floor(high), 2 ** 31 - 1) });
  const spread = fc
    .double({ min: low, max: high, noNaN: true, noDefaultInfinity: true })
    .map((value) => (Math.abs(value) < reach.least && low <= 0 ? 0 : value));
  const ordinary = fc.integer({ min: Math.ceil(Math.max(low, -100)), max: Math.floor(Math.min(high, 1000)) });
  return fc.oneof(spread, low <= 0 || high < 1 ? spread : fc.constantFrom(low, high), high >= 1 ? ordinary : spread);
}

function stringOf(shape: Shape): fc.Arbitrary<string> {
  const actions = actionsOf(shape);
  const pattern = actions.find((action) => action.type === 'regex')?.requirement;
  if (pattern instanceof RegExp) return fc.stringMatching(pattern);
  if (actions.some((action) => action.type === 'iso_date')) {
    return fc
      .date({ min: new Date('2000-01-01'), max: new Date('2099-12-31'), noInvalidDate: true })
      .map((date) => date.toISOString().slice(0, 10));
  }
  return fc.oneof(fc.string({ maxLength: 40 }), fc.constantFrom('hard', 'Łukasz µ Ω', ' ', '<b>'));
}

function inner(shape: Shape): Shape {
  return shape.wrapped ?? missing('wrapped');
}

function missing(part: string): never {
  throw new RangeError(`arbitraryOf: the schema must have ${part}, got none`);
}
