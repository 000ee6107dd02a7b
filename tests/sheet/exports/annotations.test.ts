import { Ajv2020 } from 'ajv/dist/2020.js';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { annotatedPhotosZip } from '../../../src/sheet/exports/annotated-photos.ts';
import { annotationPage, exportedPhotos } from '../../../src/sheet/exports/annotations.ts';
import { photoFileName } from '../../../src/sheet/exports/photo-file-name.ts';
import { hutRecord, NEWEST_MS } from '../hut-pack.ts';
import { jpegNumber } from '../pdf-inputs.ts';
import { CALLED_OUT, DIPPER_INPUT, inputOf, WREN_INPUT } from './inputs.ts';

/**
 * By hand from the W3C Recommendation "Web Annotation Data Model" of 23 February 2017. Sections: 3.1 (an annotation has
 * an id, type and target), 3.2.4 (TextualBody: value, format), 3.3.5 (motivation), 3.3.1 (created, xsd:dateTime in UTC),
 * 4.1 and 4.2 (a SpecificResource has a source and a selector), 4.2.1 (FragmentSelector: value, conformsTo), 4.2.7
 * (SvgSelector: value), 5.1 (AnnotationCollection: label, total), 5.2 (AnnotationPage: id, type, items, partOf,
 * startIndex). `xywh=percent:` is W3C Recommendation "Media Fragments URI 1.0 (basic)", section 4.2.2.
 */
const PERCENT = '(100|\\d{1,2}(\\.\\d+)?)';
const PAGE_SHAPE = {
  type: 'object',
  required: ['@context', 'id', 'type', 'items', 'partOf', 'startIndex', 'disclosure'],
  properties: {
    '@context': { type: 'array', contains: { const: 'http://www.w3.org/ns/anno.jsonld' } },
    id: { type: 'string', pattern: '^urn:' },
    type: { const: 'AnnotationPage' },
    partOf: {
      type: 'object',
      required: ['id', 'type', 'label', 'total'],
      properties: {
        id: { type: 'string', pattern: '^urn:' },
        type: { const: 'AnnotationCollection' },
        label: { type: 'string', minLength: 1 },
        total: { type: 'integer', minimum: 0 },
      },
    },
    startIndex: { const: 0 },
    disclosure: { type: 'string', minLength: 1 },
    items: { type: 'array', items: { $ref: '#/$defs/annotation' } },
  },
  $defs: {
    annotation: {
      type: 'object',
      required: ['id', 'type', 'motivation', 'created', 'body', 'target'],
      not: { required: ['@context'] },
      properties: {
        id: { type: 'string', pattern: '^urn:uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$' },
        type: { const: 'Annotation' },
        motivation: { const: 'describing' },
        created: { type: 'string', pattern: '^\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\.\\d+)?Z$' },
        body: {
          type: 'object',
          required: ['type', 'value', 'format'],
          properties: {
            type: { const: 'TextualBody' },
            value: { type: 'string' },
            format: { const: 'text/plain' },
          },
        },
        target: {
          type: 'object',
          required: ['source', 'selector'],
          properties: {
            source: { type: 'string', pattern: '^photos/photo-\\d+\\.jpg$' },
            selector: { oneOf: [{ $ref: '#/$defs/fragment' }, { $ref: '#/$defs/svg' }] },
          },
        },
      },
    },
    fragment: {
      type: 'object',
      required: ['type', 'conformsTo', 'value'],
      properties: {
        type: { const: 'FragmentSelector' },
        conformsTo: { const: 'http://www.w3.org/TR/media-frags/' },
        value: { type: 'string', pattern: `^xywh=percent:${PERCENT}(,${PERCENT}){3}$` },
      },
    },
    svg: {
      type: 'object',
      required: ['type', 'value'],
      properties: {
        type: { const: 'SvgSelector' },
        value: {
          type: 'string',
          pattern: '^<svg xmlns="http://www\\.w3\\.org/2000/svg" viewBox="0 0 \\d+ \\d+"><path d="M[\\d. L]+"/></svg>$',
        },
      },
    },
  },
};
const validate = new Ajv2020({ strict: false, allErrors: true }).compile(PAGE_SHAPE);
const complaints = (page: unknown) => (validate(JSON.parse(JSON.stringify(page))) ? [] : (validate.errors ?? []));

const input = inputOf(hutRecord({ photos: CALLED_OUT }));
const page = annotationPage(input, exportedPhotos(input));

describe('all callouts of a pack as one page of annotations', () => {
  it.each([
    ['the hut pack', input],
    ['Wren', WREN_INPUT],
    ['Dipper', DIPPER_INPUT],
    ['a pack without photos', inputOf(hutRecord())],
  ])('has the shapes of the W3C recommendation: %s', (_, one) => {
    expect(complaints(annotationPage(one, exportedPhotos(one)))).toEqual([]);
  });

  it('would be refused with a motivation or a selector that the recommendation does not know', () => {
    const [first] = page.items;
    expect(complaints({ ...page, items: [{ ...first, motivation: 'showing' }] })).not.toEqual([]);
    const strange = {
      ...first,
      target: { source: 'photos/photo-01.jpg', selector: { type: 'BoxSelector', value: '1' } },
    };
    expect(complaints({ ...page, items: [strange] })).not.toEqual([]);
  });

  it('holds 3 of the 4 callouts and says so in total: the cover-up and its words are left out', () => {
    expect(page.items).toHaveLength(3);
    expect(page.partOf.total).toBe(3);
    expect(JSON.stringify(page)).not.toContain('a face');
  });

  it('selects a box by percent and a leader by its path in pixels, on the photo’s file', () => {
    // 0.1–0.4 across and 0.2–0.6 down; the leader's points times 1600 × 1200.
    expect(page.items[1]?.target).toEqual({
      source: 'photos/photo-01.jpg',
      selector: {
        type: 'FragmentSelector',
        conformsTo: 'http://www.w3.org/TR/media-frags/',
        value: 'xywh=percent:10,20,30,40',
      },
    });
    expect(page.items[0]?.target.selector.value).toContain('M400 600L1200 150');
    expect(page.items[2]?.target.source).toBe('photos/photo-02.jpg');
  });

  it('says its own words, else the item and grade it shows, else nothing', () => {
    expect(page.items.map(({ body }) => body.value)).toEqual(['=strands end short', 'Main lug: failed', '']);
  });

  it('leaves out the callouts of a photo that does not go along', () => {
    const [, second] = exportedPhotos(input);
    if (second === undefined) throw new Error('the hut pack has two photos here');
    const rest = annotationPage(input, [second]);
    expect(rest.items.map(({ target }) => target.source)).toEqual(['photos/photo-02.jpg']);
    expect(rest.partOf.total).toBe(1);
  });

  it('carries the disclosure', () => {
    expect(page.disclosure).toBe(
      'Invented demo: no such pack exists. Sample bought from a shop. No link of the tester’s pays a commission.',
    );
  });
});

describe('photos and annotations as a zip, read back by another function', () => {
  const photos = exportedPhotos(input).map(({ fileName }, place) => ({ fileName, bytes: jpegNumber(place) }));
  const zip = annotatedPhotosZip({ page, photos, atMs: NEWEST_MS });

  it('has the page and 2 photos, each byte for byte, under the names the annotations point at', () => {
    const files = unzipSync(zip);
    expect(Object.keys(files)).toEqual(['annotations.jsonld', 'photos/photo-01.jpg', 'photos/photo-02.jpg']);
    expect(files['photos/photo-02.jpg']).toEqual(new Uint8Array(jpegNumber(1)));
    expect(JSON.parse(strFromU8(files['annotations.jsonld'] ?? new Uint8Array()))).toEqual(
      JSON.parse(JSON.stringify(page)),
    );
    for (const { target } of page.items) expect(Object.keys(files)).toContain(target.source);
  });

  it('is stored, not packed, and the same bytes twice', () => {
    // PKWARE APPNOTE, section 4.3.7: bytes 8 and 9 of a local file header are the compression method, 0 is stored.
    expect([zip[8], zip[9]]).toEqual([0, 0]);
    expect(annotatedPhotosZip({ page, photos, atMs: NEWEST_MS })).toEqual(zip);
  });

  it('takes a record without a date and one far in the future', () => {
    for (const atMs of [0, 9e14])
      expect(Object.keys(unzipSync(annotatedPhotosZip({ page, photos, atMs })))).toHaveLength(3);
  });
});

it('names photo 7 of 60 photo-07.jpg and of 120 photo-007.jpg', () => {
  expect([photoFileName(7, 60), photoFileName(7, 120), photoFileName(120, 120)]).toEqual([
    'photo-07.jpg',
    'photo-007.jpg',
    'photo-120.jpg',
  ]);
});
