import { describe, expect, it } from 'vitest';
import { idsReferredTo } from './ids-referred-to.ts';

describe('ids named in a source', () => {
  it('are found where they stand: 6 items and 2 facts in a made-up source', () => {
    const source = `
      { itemId: 'a-one' }, { itemIds: ['b-two'] }, { subject: 'answer', part: 'c-three', v },
      answers: { 'd-four': graded('weak'), },
      ['e-five', 'failed'], [packId, 'answer', 'f-six'],
      { subject: 'fact', part: 'metal', v }, factId === 'glued-lid'
      import { x } from './g-seven.ts'; class="h-eight"; ['item', 'fact', 'before']`;
    expect(idsReferredTo(source)).toEqual({
      items: ['a-one', 'b-two', 'c-three', 'd-four', 'e-five', 'f-six'],
      facts: ['glued-lid', 'metal'],
    });
  });
});
