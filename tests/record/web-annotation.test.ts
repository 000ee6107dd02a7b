import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { RecordCallout } from '../../src/record/pack-record.ts';
import { calloutOfWebAnnotation, webAnnotationOf } from '../../src/record/web-annotation.ts';
import { CALLOUT_KINDS, type ImagePoint } from '../../src/schema/callout.ts';
import { PHOTO, stampAt } from './made-entries.ts';

const picture = { source: `photos/${PHOTO}.jpg`, widthPx: 2000, heightPx: 1000 };
const base = { id: '0123456789abcdef0123456789abcdef', photoId: PHOTO, made: stampAt(1_764_000_000_000) };
const outline: RecordCallout = { ...base, kind: 'outline', number: null, points: [[0.57, 0.2], [0.07, 0.5]] }; // biome-ignore format: one line
const leader: RecordCallout = { ...base, kind: 'leader', number: 3, text: 'lifted weld', points: [[0.1, 0.2], [0.5, 0.25]] }; // biome-ignore format: one line

it('writes the box (0.57, 0.2)–(0.07, 0.5) as the fragment xywh=percent:7,20,50,30', () => {
  // Media Fragments URI 1.0, section 4.2.2: x, y, width, height in percent.
  expect(webAnnotationOf(outline, picture).target).toEqual({
    source: `photos/${PHOTO}.jpg`,
    selector: {
      type: 'FragmentSelector',
      conformsTo: 'http://www.w3.org/TR/media-frags/',
      value: 'xywh=percent:7,20,50,30',
    },
  });
});

it('writes a leader on a 2000 × 1000 picture as the path M200 200L1000 250, made 2025-11-24T16:00:00Z', () => {
  const annotation = webAnnotationOf(leader, picture);
  expect(annotation.target.selector).toEqual({
    type: 'SvgSelector',
    value: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 2000 1000"><path d="M200 200L1000 250"/></svg>',
  });
  expect(annotation).toMatchObject({
    id: 'urn:uuid:01234567-89ab-cdef-0123-456789abcdef',
    type: 'Annotation',
    created: '2025-11-24T16:00:00.000Z',
    body: { type: 'TextualBody', value: 'lifted weld', callout: { kind: 'leader', number: 3 } },
  });
});

it('comes back the same over 500 random callouts of every kind, through JSON text', () => {
  const point = fc.tuple(fc.integer({ min: 0, max: 10_000 }), fc.integer({ min: 0, max: 10_000 }));
  const anyCallout = fc.record(
    {
      kind: fc.constantFrom(...CALLOUT_KINDS),
      number: fc.option(fc.integer({ min: 1, max: 99 })),
      points: fc.array(
        point.map(([x, y]): ImagePoint => [x / 10_000, y / 10_000]),
        { minLength: 1, maxLength: 64 },
      ),
      text: fc.string({ unit: 'grapheme', maxLength: 40 }),
      itemId: fc.constantFrom('cell-vents', 'bus-bars'),
      ink: fc.constant('unknown fields stay'),
    },
    { requiredKeys: ['kind', 'number', 'points'] },
  );
  fc.assert(
    fc.property(anyCallout, (random) => {
      const callout: RecordCallout = { ...base, ...random };
      const sent: unknown = JSON.parse(JSON.stringify(webAnnotationOf(callout, picture)));
      expect(calloutOfWebAnnotation(sent, picture)).toEqual({ ok: true, callout });
    }),
    { numRuns: 500 },
  );
});

it.each([
  ['something else', { type: 'Note' }, 'not an annotation'],
  ['a callout without points', withCallout({ points: [] }), 'malformed'],
  ['a moved callout', withCallout({ points: [[0, 0]] }), 'disagree'],
])('refuses %s', (_, annotation, reason) => {
  const read = calloutOfWebAnnotation(annotation, picture);
  expect(read.ok ? '' : read.reason).toContain(reason);
});

function withCallout(change: object) {
  const annotation = webAnnotationOf(leader, picture);
  return { ...annotation, body: { ...annotation.body, callout: { ...annotation.body.callout, ...change } } };
}
