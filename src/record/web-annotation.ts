import * as v from 'valibot';
import { type Callout, calloutSchema, type ImagePoint } from '../schema/callout.ts';
import { randomIdSchema } from '../schema/text-limits.ts';
import { canonicalJson } from './canonical-json.ts';
import type { RecordCallout } from './pack-record.ts';
import { stampMs } from './stamp-ms.ts';

/** What a callout is drawn on: where the picture lies, and its size in pixels. */
export interface AnnotatedPicture {
  source: string;
  widthPx: number;
  heightPx: number;
}

/** Our member of the body, told to JSON-LD readers as opaque JSON. */
const CONTEXT = [
  'http://www.w3.org/ns/anno.jsonld',
  { callout: { '@id': 'urn:underlid:callout', '@type': '@json' } },
] as const;

const annotationSchema = v.looseObject({
  type: v.literal('Annotation'),
  id: v.pipe(v.string(), v.regex(/^urn:uuid:[0-9a-f-]{36}$/)),
  body: v.looseObject({ callout: v.looseObject({ number: v.nullable(v.number()) }) }),
  target: v.looseObject({ source: v.string(), selector: v.unknown() }),
});

export type WebAnnotation = ReturnType<typeof webAnnotationOf>;
export type ReadAnnotation = { ok: true; callout: RecordCallout } | { ok: false; reason: string };

/**
 * A callout as a W3C Web Annotation: a box kind (outline, cover) selects by media fragment, every other by the path it
 * draws, in pixels. The body holds the words and, under `callout`, everything of ours, so that nothing is lost.
 *
 * Source  W3C Recommendation "Web Annotation Data Model" (2017), sections 3.2.4, 4.2.1 and 4.2.7; W3C "Media Fragments
 *         URI 1.0", section 4.2.2
 * Check   tests/record/web-annotation.test.ts
 */
export function webAnnotationOf(callout: RecordCallout, picture: AnnotatedPicture) {
  const { id, ...rest } = callout;
  return {
    '@context': CONTEXT,
    id: `urn:uuid:${id.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5')}`,
    type: 'Annotation' as const,
    created: new Date(stampMs(callout.made)).toISOString(),
    motivation: 'describing' as const,
    body: {
      type: 'TextualBody' as const,
      format: 'text/plain' as const,
      value: callout.text ?? '',
      callout: rest,
    },
    target: { source: picture.source, selector: selectorOf(callout, picture) },
  };
}

/** Reads an annotation of ours back. Refuses one whose selector no longer says what its callout says. */
export function calloutOfWebAnnotation(input: unknown, picture: AnnotatedPicture): ReadAnnotation {
  if (!v.is(annotationSchema, input)) return { ok: false, reason: 'not an annotation that holds a callout' };
  const { number, ...rest } = input.body.callout;
  const checked = v.safeParse(calloutSchema, rest);
  const id = input.id.slice('urn:uuid:'.length).replaceAll('-', '');
  if (!checked.success || !v.is(randomIdSchema, id)) return { ok: false, reason: 'its callout is malformed' };
  const callout: RecordCallout = { ...(rest as Callout), id, number };
  if (canonicalJson(input.target.selector) !== canonicalJson(selectorOf(callout, picture))) {
    return { ok: false, reason: 'its selector and its callout disagree' };
  }
  return { ok: true, callout };
}

function selectorOf(callout: Callout, picture: AnnotatedPicture) {
  if (callout.kind === 'outline' || callout.kind === 'cover') {
    return {
      type: 'FragmentSelector' as const,
      conformsTo: 'http://www.w3.org/TR/media-frags/' as const,
      value: `xywh=percent:${boxPercent(callout.points).join(',')}`,
    };
  }
  return { type: 'SvgSelector' as const, value: svgOf(callout.points, picture) };
}

/** Left, top, width and height of the box around the points, in percent of the picture. */
function boxPercent(points: readonly ImagePoint[]): number[] {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return [left, top, Math.max(...xs) - left, Math.max(...ys) - top].map((share) => plainNumber(share * 100));
}

/** The points as one open path in pixels; a single point as a path that goes nowhere. */
function svgOf(points: readonly ImagePoint[], { widthPx, heightPx }: AnnotatedPicture): string {
  const pairs = points.map(([x, y]) => `${plainNumber(x * widthPx)} ${plainNumber(y * heightPx)}`);
  const path = `M${pairs.length === 1 ? `${pairs[0]}L${pairs[0]}` : pairs.join('L')}`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${widthPx} ${heightPx}"><path d="${path}"/></svg>`;
}

/** To four decimals, which undoes what binary floating point adds (0.07 · 100) and cuts nothing a screen could show. */
function plainNumber(value: number): number {
  return Number(value.toFixed(4));
}
