import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing, Mark, TextMark } from '../../../src/drawing/display-list.ts';
import { textWidth } from '../../../src/drawing/text-width.ts';
import { CARD_SIZES_PX, type CardShape, cardDrawing } from '../../../src/sheet/card/card-drawing.ts';
import type { CardFinding, CardModel } from '../../../src/sheet/card/card-model.ts';
import type { SheetPhoto } from '../../../src/sheet/model/sheet.ts';

const SHAPES: CardShape[] = ['landscape', 'portrait'];
/** Least size of a card's own words, in its pixels; numbers on a photo may be smaller. */
const LEAST_SIZE = 20;

const text = (most: number) =>
  fc.oneof(
    fc.string({ maxLength: most, unit: fc.constantFrom(...'aeinst MWQy,.电Ж°Åg ') }),
    fc.string({ minLength: most, maxLength: most, unit: fc.constantFrom('W', '電', 'i', 'Å') }),
    fc.constant(''),
    fc.constant('loose strands end short of the barrel '.repeat(9).slice(0, most)),
  );
const point = fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }));
const callout = fc.record({
  kind: fc.constantFrom('leader', 'arrow', 'outline', 'stroke', 'text', 'cover'),
  points: fc.tuple(point, point),
  text: text(320),
  number: fc.integer({ min: 1, max: 120 }),
});
const photo = fc
  .record({
    photoId: fc.constantFrom(...'0123456789abcdef').map((digit) => digit.repeat(64)),
    widthPx: fc.integer({ min: 40, max: 4000 }),
    heightPx: fc.integer({ min: 40, max: 4000 }),
    callouts: fc.array(callout, { maxLength: 4 }),
  })
  .map((given) => ({ number: 1, title: '', caption: null, legend: [], ...given }) as unknown as SheetPhoto);
const finding: fc.Arbitrary<CardFinding> = fc.record({
  itemId: fc.constant('main-lug'),
  grade: fc.constantFrom('weak', 'failed'),
  title: text(120),
  standing: fc.constantFrom('weak · serious risk', 'maybe failed · medium risk'),
  words: text(320),
  photo: fc.option(photo),
  legend: text(320),
});
const model: fc.Arbitrary<CardModel> = fc.record({
  name: text(120),
  sample: text(120),
  marks: fc.subarray(['not closed: revision 12 in the making', 'invented demo', 'draft checklist', 'short route']),
  verdict: fc.record({ title: text(60), line: text(200) }),
  score: fc.constantFrom<CardModel['score']>(
    { label: 'Score', figures: '100.0', range: { low: 100, high: 100 }, settled: true },
    { label: 'Score, not settled yet', figures: '0.0–100.0', range: { low: 0, high: 100 }, settled: false },
    { label: 'Score withheld', figures: '', range: null, settled: false },
  ),
  findings: fc.array(finding, { maxLength: 3 }),
  findingCount: fc.integer({ min: 0, max: 120 }),
  disclosure: text(400),
  caution: text(120),
  madeWith: fc.constant('Made with Underlid'),
});

// Ink reach of the face, from its head table at 1000 units: highest accented capital 0.96, lowest descender 0.26.
function boxOf(mark: TextMark) {
  const width = textWidth(mark.text, mark);
  const left = mark.x - { start: 0, middle: width / 2, end: width }[mark.anchor];
  return { left, right: left + width, top: mark.y - 0.96 * mark.size, bottom: mark.y + 0.26 * mark.size };
}
type Edges = ReturnType<typeof boxOf>;
const texts = ({ marks }: Drawing) => marks.filter((mark): mark is TextMark => mark.kind === 'text');
const within = (inner: Edges, outer: Edges) =>
  inner.left >= outer.left - 1e-6 &&
  inner.right <= outer.right + 1e-6 &&
  inner.top >= outer.top - 1e-6 &&
  inner.bottom <= outer.bottom + 1e-6;
const meet = (a: Edges, b: Edges) =>
  a.left < b.right - 1e-6 && b.left < a.right - 1e-6 && a.top < b.bottom - 1e-6 && b.top < a.bottom - 1e-6;

/** Boxes that hide whatever picture lies under the card. */
function opaqueBoxes(marks: Mark[]): Edges[] {
  return marks.flatMap((mark) => {
    const box =
      mark.kind === 'picture'
        ? mark
        : mark.kind === 'shape' && mark.shape.form === 'box' && mark.fill !== undefined
          ? mark.shape
          : null;
    return box === null ? [] : [{ left: box.x, right: box.x + box.width, top: box.y, bottom: box.y + box.height }];
  });
}

const cards = (given: Partial<CardModel>) => {
  const [card] = fc.sample(model, { numRuns: 1, seed: 7 });
  if (card === undefined) throw new Error('no card');
  return SHAPES.map((shape) =>
    texts(cardDrawing({ ...card, ...given }, { shape, opaque: true })).map((mark) => mark.text),
  );
};
const [shown] = fc.sample(finding, { numRuns: 1, seed: 7 });

describe('how many findings there are', () => {
  it('is said as “1 of 11 findings” over one of 11', () => {
    if (shown === undefined) throw new Error('no finding');
    for (const said of cards({ findings: [shown], findingCount: 11 })) expect(said).toContain('1 of 11 findings');
    for (const said of cards({ findings: [shown], findingCount: 1 })) expect(said).toContain('1 of 1 finding');
  });

  it('is said where all 11 are taken off, and that nothing was found only where there are 0', () => {
    const none = 'Nothing that was looked at was graded weak or failed.';
    for (const said of cards({ findings: [], findingCount: 11 })) {
      expect(said.join(' ')).toContain('11 findings, none shown here.');
      expect(said.join(' ')).not.toContain(none);
    }
    for (const said of cards({ findings: [], findingCount: 0 })) expect(said.join(' ')).toContain(none);
  });
});

describe('cardDrawing', () => {
  it('draws all 4 marks, wrapped into rows, and a sample’s short name before them', () => {
    const marks = ['not closed: revision 12 in the making', 'invented demo', 'draft checklist', 'short route'];
    for (const said of cards({ marks, sample: 'sample 1' }))
      expect(said.filter((one) => [...marks, 'sample 1'].includes(one))).toEqual(['sample 1', ...marks]);
  });

  it('keeps every text on the canvas and off every other one, whatever it says: 0 overlaps over 60 cards', () => {
    fc.assert(
      fc.property(model, fc.constantFrom(...SHAPES), fc.boolean(), (card, shape, opaque) => {
        const drawing = cardDrawing(card, { shape, opaque });
        const { widthPx, heightPx } = CARD_SIZES_PX[shape];
        const boxes = texts(drawing).map((mark) => ({ mark, box: boxOf(mark) }));
        const edge = { left: 24, right: widthPx - 24, top: 24, bottom: heightPx - 24 };
        for (const [place, { mark, box }] of boxes.entries()) {
          expect(within(box, edge), `${mark.text} leaves the canvas`).toBe(true);
          const other = boxes.slice(place + 1).find((one) => meet(box, one.box) && one.mark.text.trim() !== '');
          // Lines of one text stand closer than accent and descender together reach.
          if (other && Math.abs(other.mark.y - mark.y) < mark.size * 1.2)
            expect.fail(`“${mark.text}” lies on “${other.mark.text}”`);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('lays every text of a see-through card wholly on one opaque strip or photo, over 60 cards', () => {
    fc.assert(
      fc.property(model, fc.constantFrom(...SHAPES), (card, shape) => {
        const { marks } = cardDrawing(card, { shape, opaque: false });
        for (const [place, mark] of marks.entries()) {
          if (mark.kind !== 'text') continue;
          const under = opaqueBoxes(marks.slice(0, place));
          expect(
            under.some((box) => within(boxOf(mark), box)),
            mark.text,
          ).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('keeps strips of a see-through card off one another and on the canvas, over 60 cards', () => {
    fc.assert(
      fc.property(model, fc.constantFrom(...SHAPES), (card, shape) => {
        const { marks } = cardDrawing(card, { shape, opaque: false });
        const strips = opaqueBoxes(marks.filter((mark) => mark.kind === 'shape' && mark.fill === 'ground'));
        const { widthPx, heightPx } = CARD_SIZES_PX[shape];
        for (const [place, box] of strips.entries()) {
          expect(within(box, { left: 0, top: 0, right: widthPx, bottom: heightPx })).toBe(true);
          expect(strips.slice(place + 1).filter((other) => meet(box, other))).toEqual([]);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('writes nothing of its own smaller than 20 px, over 60 cards', () => {
    fc.assert(
      fc.property(model, fc.constantFrom(...SHAPES), (card, shape) => {
        const bare = { ...card, findings: card.findings.map((one) => ({ ...one, photo: null })) };
        for (const mark of texts(cardDrawing(bare, { shape, opaque: true })))
          expect(mark.size).toBeGreaterThanOrEqual(LEAST_SIZE);
      }),
      { numRuns: 60 },
    );
  });

  it('shows each photo in its own shape, neither stretched nor cut: width to height within 1 part in 10⁶', () => {
    fc.assert(
      fc.property(model, fc.constantFrom(...SHAPES), (card, shape) => {
        const pictures = cardDrawing(card, { shape, opaque: true }).marks.filter(({ kind }) => kind === 'picture');
        const photos = card.findings.flatMap((one) => one.photo ?? []);
        expect(pictures).toHaveLength(photos.length);
        for (const [place, mark] of pictures.entries()) {
          const shown = photos[place];
          if (mark.kind !== 'picture' || shown === undefined) throw new Error('no such picture');
          expect((mark.width / mark.height / (shown.widthPx / shown.heightPx)).toFixed(6)).toBe('1.000000');
        }
      }),
      { numRuns: 40 },
    );
  });
});
