import { describe, expect, it } from 'vitest';
import { hrefTo, PLACES, parseRoute } from '../../src/app/route.ts';

const PACK = '0123456789abcdef0123456789abcdef';

describe('addresses', () => {
  it('are read back as written for all 24 places of a pack, with an id that holds a slash', () => {
    expect(PLACES).toHaveLength(24);
    for (const place of PLACES) {
      const id = place === 'pack' ? '' : 'aa/bb c';
      expect(parseRoute(hrefTo(PACK, place, id))).toEqual({ screen: 'pack', packId: PACK, place, id });
    }
  });

  it.each([
    ['', 'bench'],
    ['#/', 'bench'],
    ['#/keep', 'keep'],
    ['#/keep/regrade', 'regrade'],
    ['#/side-by-side', 'sideBySide'],
    ['#/tray', 'tray'],
    ['#/last', 'last'],
    ['#/nonsense', 'lost'],
    [`#/${PACK}/nowhere`, 'lost'],
    ['#/../../etc', 'lost'],
    [`#/${PACK}/item/%E0%A4%A`, 'lost'],
  ])('“%s” leads to %s', (hash, screen) => {
    expect(parseRoute(hash).screen).toBe(screen);
  });
});
