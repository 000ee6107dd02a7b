import { describe, expect, it } from 'vitest';
import type { GridBlock } from '../../../src/sheet/model/sheet.ts';
import { makeSideBySide } from '../../../src/sheet/model/side-by-side/make-side-by-side.ts';
import { writePdf } from '../../../src/sheet/pdf/write-pdf.ts';
import { hutRecord } from '../hut-pack.ts';
import { FONTS, noPhotos } from '../pdf-inputs.ts';
import { readPdf } from '../read-pdf.ts';
import { compared, comparisonOf } from './hut-comparison.ts';

const LONG = 'Longhaul Marine Edition 24 V 100 Ah with heating and data link';

function paperOf(count: number) {
  const packs = Array.from({ length: count }, (_, place) =>
    compared({
      packId: String(place).repeat(32),
      nameplate: { ...hutRecord().nameplate, name: `${LONG} ${place + 1}`, price: 400 + place },
    }),
  );
  return makeSideBySide(comparisonOf(packs));
}
const read = async (count: number, paper: 'a4' | 'letter') =>
  readPdf(await writePdf({ sheet: paperOf(count), paper, photos: noPhotos, fonts: FONTS }));

describe.each(['a4', 'letter'] as const)('the comparison on %s, read back by another program', (paper) => {
  it.each([2, 8])('says every name, label and figure of %i packs with long names', async (count) => {
    const { text } = await read(count, paper);
    const grid = paperOf(count)
      .sections.flatMap(({ blocks }) => blocks)
      .find((block): block is GridBlock => block.kind === 'grid');
    const words = (grid?.rows ?? []).flatMap(({ label, cells }) => [label, ...cells.map((cell) => cell.text)]);
    expect(words.length).toBe(33 * (count + 1));
    const letters = (said: string) => said.normalize('NFKC').replace(/\s+/g, '');
    const all = letters(text);
    expect(words.filter((word) => !all.includes(letters(word)))).toEqual([]);
    for (let place = 1; place <= count; place += 1) expect(all).toContain(letters(`${LONG} ${place}`));
  });

  it('sets 8 packs in two bands of four, and the head of a band again on a later page', async () => {
    const { pages, text } = await read(8, paper);
    expect(text).toContain('Packs 1 to 4 of 8');
    expect(text).toContain('Packs 5 to 8 of 8');
    const tail = (place: number) => new RegExp(`link ${place}\\b`);
    const withHead = pages.filter((page) => tail(1).test(page.text) && /Verdict|Sample/.test(page.text));
    expect(withHead.length).toBeGreaterThanOrEqual(2);
    expect(pages[0]?.text).not.toContain('Packs 5 to 8');
    pages.forEach((page, place) => {
      expect(page.text).toContain(`${place + 1} of ${pages.length}`);
      expect(page.text).toContain('invented demo');
    });
  });

  it('has one band and no word of bands for 2 packs', async () => {
    const { text, bookmarks } = await read(2, paper);
    expect(text).not.toContain('Packs 1 to');
    expect(bookmarks).toEqual([
      'How firm the order is',
      'What the comparison rests on',
      'In pictures',
      'How each sample was obtained',
      'Cautions',
    ]);
  });
});
