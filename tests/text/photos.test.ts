import { expect, it } from 'vitest';
import type { IntakeProblem } from '../../src/photos/intake.ts';
import { photoProblemSentence } from '../../src/text/photos.ts';

/** A key per problem, so that a new one without a case here does not compile. */
const WHAT_TO_DO: Record<IntakeProblem, RegExp> = {
  empty: /pick it again/,
  notAPicture: /Pick a JPEG/,
  unreadable: /download it/,
  cannotDecode: /“Most compatible”/,
  damaged: /Copy it to this phone again/,
  tooLarge: /smaller picture size/,
  outOfMemory: /Close other apps/,
  canvasBlocked: /another browser/,
  cancelled: /Pick it again/,
};

it.each(Object.entries(WHAT_TO_DO) as [IntakeProblem, RegExp][])(
  '%s names the file and says what to do',
  (problem, advice) => {
    const sentence = photoProblemSentence(problem, 'IMG_0042.heic');
    expect(sentence).toMatch(/^“IMG_0042\.heic” /);
    expect(sentence).toMatch(advice);
    expect(photoProblemSentence(problem, '')).toMatch(/^The picture /);
  },
);
