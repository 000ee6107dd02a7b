import type { Mark } from '../../drawing/display-list.ts';
import { fitText, fittedMarks } from '../../drawing/fitted-text.ts';
import { LID_GLYPH_HEIGHT, LID_GLYPH_WIDTH, lidGlyph } from '../../drawing/lid-glyph.ts';
import { placeMarks } from '../../drawing/place-marks.ts';
import type { Part } from './card-head.ts';
import type { CardFinding } from './card-model.ts';
import { type Box, containedBox, photoMarks } from './card-photo.ts';

const GLYPH_SCALE = 2;
const GLYPH_WIDTH = LID_GLYPH_WIDTH * GLYPH_SCALE;
const GLYPH_HEIGHT = LID_GLYPH_HEIGHT * GLYPH_SCALE;
const GAP = 18;
/** Width a photo's box may take of a finding's. */
const PHOTO_FRAC = 0.4;
const LEGEND_HEIGHT = 28;
const MOST_WORDS_SIZE = 36;
const WORDS_SIZES = [MOST_WORDS_SIZE, 34, 32, 30, 28, 26, 24, 22, 20];

export interface FindingPart extends Part {
  /** At which the sentence or note is set. */
  wordsSize: number;
}

/** One finding in its box, words no larger than `mostWordsSize`: its photo, then glyph and title, how it stands, the sentence or note, and what the numbers point at. */
export function findingPart(finding: CardFinding, box: Box, mostWordsSize = MOST_WORDS_SIZE): FindingPart {
  const photoBox =
    finding.photo === null ? null : containedBox(finding.photo, { ...box, width: box.width * PHOTO_FRAC });
  const left = box.x + (photoBox === null ? 0 : photoBox.width + 30);
  const place = { x: left, y: box.y, width: box.x + box.width - left, height: box.height };
  const said = saidPart(finding, place, mostWordsSize);
  const photo = finding.photo === null || photoBox === null ? [] : photoMarks(finding.photo, photoBox);
  return { ...said, marks: [...photo, ...said.marks], height: Math.max(photoBox?.height ?? 0, said.height) };
}

function saidPart(finding: CardFinding, { x, y, width, height }: Box, mostWordsSize: number): FindingPart {
  const titleX = x + GLYPH_WIDTH + GAP;
  const titleWidth = width - GLYPH_WIDTH - GAP;
  const title = fitText({
    text: finding.title,
    width: titleWidth,
    height: Math.max(38, height * 0.34),
    weight: 600,
    sizes: [34, 32, 30, 28, 26, 24],
  });
  const standing = fitText({ text: finding.standing, width: titleWidth, height: 28, weight: 500, sizes: [22, 20] });
  const headHeight = Math.max(GLYPH_HEIGHT, title.height + standing.height);
  const legendHeight = finding.legend === '' ? 0 : LEGEND_HEIGHT + 8;
  const words = fitText({
    text: finding.words,
    width,
    height: height - headHeight - 10 - legendHeight,
    weight: 400,
    sizes: WORDS_SIZES.filter((size) => size <= mostWordsSize),
  });
  const legend = fitText({ text: finding.legend, width, height: LEGEND_HEIGHT, weight: 400, sizes: [20] });
  const wordsY = y + headHeight + 10;
  const marks: Mark[] = [
    ...placeMarks(lidGlyph(finding.grade), { x, y: y - 4, scale: GLYPH_SCALE }),
    ...fittedMarks(title, { x: titleX, y, ink: 'ink' }),
    ...fittedMarks(standing, { x: titleX, y: y + title.height, ink: 'muted' }),
    ...fittedMarks(words, { x, y: wordsY, ink: 'ink' }),
    ...(finding.legend === '' ? [] : fittedMarks(legend, { x, y: wordsY + words.height + 8, ink: 'muted' })),
  ];
  return { marks, height: headHeight + 10 + words.height + legendHeight, wordsSize: words.face.size };
}
