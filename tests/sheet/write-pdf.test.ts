import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { PackRecord } from '../../src/record/pack-record.ts';
import { type PdfInput, writePdf } from '../../src/sheet/pdf/write-pdf.ts';
import { hutPhoto, hutRecord, hutSheet, LUG_NOTE, stampAt } from './hut-pack.ts';
import { FONTS, jpegNumber, jpegPhotos, noPhotos } from './pdf-inputs.ts';
import { readPdf } from './read-pdf.ts';

const write = (record: PackRecord, given: Partial<PdfInput> = {}) =>
  writePdf({ sheet: hutSheet(record), paper: 'a4', photos: jpegPhotos, fonts: FONTS, ...given });
const sha256 = (bytes: ArrayBuffer) => createHash('sha256').update(new Uint8Array(bytes)).digest('hex');
const photosOf = (count: number) =>
  Array.from({ length: count }, (_, place) => hutPhoto(place + 1, place < 20 ? { itemIds: ['main-lug'] } : {}));

describe('read back by another program', () => {
  const bytes = write(hutRecord({ photos: [hutPhoto(1, { itemIds: ['main-lug'] }), hutPhoto(2)] }));

  it('gives Ω ° ≤ ² µ é ł back as text that can be selected and searched', async () => {
    const { text } = await readPdf(await bytes);
    expect(text).toContain(LUG_NOTE.normalize('NFKC').replace(/\s+/g, ' '));
  });

  it('says verdict, score, ledger and hash', async () => {
    const { text } = await readPdf(await bytes);
    for (const said of [
      'Workshop first',
      '14.5–19.5',
      '36.2–48.8',
      '−21.7',
      'Hut packs (hut 0.3.0)',
      'invented demo',
    ]) {
      expect(text).toContain(said);
    }
  });

  it('numbers every page “n of all” and marks every page as an invented demo', async () => {
    const { pages } = await readPdf(await bytes);
    expect(pages.length).toBeGreaterThan(2);
    pages.forEach(({ text }, place) => {
      expect(text).toContain(`${place + 1} of ${pages.length}`);
      expect(text).toContain('invented demo');
      expect(text).toContain('Wren 24');
    });
  });

  it('holds title, British English, the record’s newest time and an outline of 13 sections and 2 findings', async () => {
    const { title, language, created, bookmarks } = await readPdf(await bytes);
    expect(title).toBe('Wren 24 · sample 1');
    expect(language).toBe('en-GB');
    expect(created).toBe("D:20261124233000+00'00'");
    expect(bookmarks).toEqual([
      'Findings',
      '> 1 Main lug',
      '> 2 Label',
      'Promised and delivered',
      'What would put it right',
      'Where the points went',
      'What was not seen, and what was taken on trust',
      'How it was done',
      'What became of the sample',
      'Opinion and reply',
      'Every answer',
      'Further photos',
      'Closed and revised',
      'Sources',
      'Cautions',
    ]);
  });

  it('holds each JPEG byte for byte, once', async () => {
    const file = Buffer.from(await bytes);
    for (const place of [1, 2]) {
      const jpeg = Buffer.from(jpegNumber(place));
      const at = file.indexOf(jpeg);
      expect(at).toBeGreaterThan(0);
      expect(file.indexOf(jpeg, at + 1)).toBe(-1);
    }
  });
});

it.each([
  ['a4', 595.28, 841.89],
  ['letter', 612, 792],
] as const)('writes %s pages of %d × %d points', async (paper, width, height) => {
  const { pages } = await readPdf(await write(hutRecord(), { paper }));
  for (const page of pages) {
    expect(page.width).toBeCloseTo(width, 1);
    expect(page.height).toBeCloseTo(height, 1);
  }
});

it('writes the same bytes twice, and others when one word or the paper differs', async () => {
  const record = hutRecord({ photos: photosOf(3) });
  const first = sha256(await write(record));
  await new Promise((resolve) => setTimeout(resolve, 1100));
  expect(sha256(await write(record))).toBe(first);
  expect(sha256(await write(record, { paper: 'letter' }))).not.toBe(first);
  expect(sha256(await write({ ...record, words: { opinion: 'Other.' } }))).not.toBe(first);
});

it('prints □ for each of the 4 characters the typeface lacks, keeps the rest of the line and counts them', async () => {
  const { text } = await readPdf(
    await write(hutRecord({ words: { opinion: 'Made by 漢字 and 🔋 or \u0007\u{1F600}, so I hear.' } })),
  );
  expect(text).toContain('Made by □□ and □ or □, so I hear.');
  expect(text).toContain('4 characters could not be printed with the typeface of this sheet and stand as □.');
});

it('says nothing of lacking characters when there are none', async () => {
  expect((await readPdf(await write(hutRecord()))).text).not.toContain('could not be printed');
});

it('places 60 photos, each once, and asks for them one after another', async () => {
  let open = 0;
  let mostOpen = 0;
  const asked: string[] = [];
  const photos = async (photoId: string) => {
    open += 1;
    mostOpen = Math.max(mostOpen, open);
    asked.push(photoId);
    await Promise.resolve();
    open -= 1;
    return jpegPhotos(photoId);
  };
  const { pages, text } = await readPdf(await write(hutRecord({ photos: photosOf(60) }), { photos }));
  expect(pages.reduce((sum, { imageCount }) => sum + imageCount, 0)).toBe(60);
  expect(new Set(asked).size).toBe(60);
  expect(asked).toHaveLength(60);
  expect(mostOpen).toBe(1);
  for (let number = 1; number <= 60; number += 1) expect(text).toContain(`Photo ${number} · Wiring`);
});

it('says so in the place of a photo that is not here or is no JPEG, and keeps its caption', async () => {
  const record = hutRecord({ photos: [hutPhoto(1, { caption: 'Gone' }), hutPhoto(2, { caption: 'Odd' })] });
  const odd = { type: 'image/jpeg', bytes: new Uint8Array([1, 2, 3]).buffer };
  const photos = async (photoId: string) => (photoId.endsWith('1') ? null : odd);
  const { text, pages } = await readPdf(await write(record, { photos }));
  expect(text).toContain('The picture is not on this phone.');
  expect(text).toContain('The stored picture is not a JPEG that can be printed.');
  expect(text).toContain('Gone');
  expect(pages.reduce((sum, { imageCount }) => sum + imageCount, 0)).toBe(0);
});

it('never ends a page with the head of a finding or of a section', async () => {
  const note = 'Strands bare for six millimetres and shiny. '.repeat(30);
  for (let words = 0; words < 30; words += 4) {
    const opinion = 'A word or two. '.repeat(words * 9);
    const answers = {
      ...hutRecord().answers,
      'main-lug': { kind: 'grade', grade: 'failed', evidence: 'seen', note: note.slice(0, 100 + words * 40) },
      tidy: { kind: 'grade', grade: 'weak', evidence: 'seen', note: note.slice(0, 50 + words * 20) },
    } as const;
    const { pages } = await readPdf(await write(hutRecord({ answers, words: { opinion } })));
    const heads =
      /(Label|Main lug|Tidy runs|Findings|Sources|Cautions|Every answer|Opinion and reply|How it was done) Underlid 0\.1\.0/;
    for (const { text } of pages) expect(text).not.toMatch(heads);
  }
});

it('carries a photo with 60 leaders and a picture linked to all items over the page', async () => {
  const callouts = Array.from({ length: 60 }, (_, place) => ({
    id: String(place),
    number: place + 1,
    photoId: 'x',
    kind: 'leader' as const,
    points: [
      [0.5, 0.5],
      [0.1, place / 60],
    ] as [number, number][],
    text: `${'A long legend of what the leader points at. '.repeat(7)}${place + 1}`,
    made: stampAt(place),
  }));
  const { text, pages } = await readPdf(await write(hutRecord({ photos: [hutPhoto(1, { callouts }), hutPhoto(2)] })));
  expect(text).toContain('points at. 60');
  expect(pages.reduce((sum, { imageCount }) => sum + imageCount, 0)).toBe(2);
});

it('writes long words, long notes and a name of 120 characters without losing a letter', async () => {
  const hash = 'abcdef0123456789'.repeat(12);
  const record = hutRecord({ words: { opinion: hash } });
  const name = 'W'.repeat(120);
  const { text } = await readPdf(await write({ ...record, nameplate: { ...record.nameplate, name } }));
  expect(text.replaceAll(' ', '')).toContain(hash);
  expect(text.replaceAll(' ', '')).toContain(name);
});

it('reports each page and stops when told to', async () => {
  const done: string[] = [];
  await write(hutRecord(), { photos: noPhotos, onProgress: (page, pages) => done.push(`${page}/${pages}`) });
  expect(done.at(0)).toMatch(/^1\//);
  expect(done.at(-1)).toBe(`${done.length}/${done.length}`);

  const stop = new AbortController();
  const pages: number[] = [];
  const written = write(hutRecord({ photos: photosOf(20) }), {
    signal: stop.signal,
    onProgress: (page) => {
      pages.push(page);
      if (page === 2) stop.abort();
    },
  });
  await expect(written).rejects.toThrow(/abort/i);
  expect(pages).toEqual([1, 2]);
});

it('writes the sheet of an empty record', async () => {
  const empty = {
    demo: false,
    nameplate: {},
    answers: {},
    facts: {},
    makeSafe: [],
    states: {},
    state: null,
    newestAt: null,
    sheetAt: null,
  };
  const { text, created } = await readPdf(await write(hutRecord({ ...empty, afterwards: {}, words: {} })));
  expect(text).toContain('Pack without a name');
  expect(created).toBe("D:19700101000000+00'00'");
  expect(text).not.toContain('invented demo');
});

it('heads a short route “Short route: 5 of 7 asked” and withholds the score at a stop sign', async () => {
  const answers = { ...hutRecord().answers, swollen: { kind: 'grade', grade: 'failed', evidence: 'seen' } as const };
  const { text, pages } = await readPdf(await write(hutRecord({ route: 'short', answers })));
  expect(pages[0]?.text).toContain('Short route: 5 of 7 asked');
  expect(pages[0]?.text).toContain('Stop: treat as damaged');
  expect(text).not.toContain('After outside work');
});
