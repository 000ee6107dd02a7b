import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/display-list.ts';
import { svgMarkup, svgNodes } from '../../src/drawing/paint-svg.ts';
import { BENCH, PAPER } from '../../src/drawing/palette.ts';
import { EVERY_MARK } from './every-mark.ts';

const words = (text: string, alt = ''): Drawing => ({
  width: 10,
  height: 10,
  alt,
  marks: [{ kind: 'text', x: 0, y: 8, text, size: 8, weight: 400, anchor: 'start', ink: 'ink' }],
});

describe('svgNodes', () => {
  it('paints all six marks, in their order', () => {
    expect(svgNodes(EVERY_MARK).children.map((child) => (typeof child === 'string' ? child : child.tag))).toEqual([
      'polyline',
      'path',
      'rect',
      'ellipse',
      'text',
      'rect',
    ]);
  });

  it('names inks as CSS variables without a palette, so that themes switch without a redraw', () => {
    const [line] = svgNodes(EVERY_MARK).children;
    expect(line).toEqual({
      tag: 'polyline',
      attrs: {
        points: '0,0 10,5 20,0',
        fill: 'none',
        stroke: 'var(--ink)',
        'stroke-width': '2',
        'stroke-dasharray': '3 1',
        'stroke-linecap': 'round',
        'stroke-linejoin': 'round',
      },
      children: [],
    });
  });

  it('is an image with a name, or hidden where words beside it say it all', () => {
    expect(svgNodes(EVERY_MARK).attrs).toMatchObject({ role: 'img', 'aria-label': 'All marks', viewBox: '0 0 100 50' });
    expect(svgNodes(words('x')).attrs).toMatchObject({ 'aria-hidden': 'true' });
  });
});

describe('svgMarkup', () => {
  it('writes a path and a haloed text exactly', () => {
    const markup = svgMarkup(EVERY_MARK, { palette: PAPER });
    expect(markup).toContain('<path d="M1 2L3 4C5 6 7 8 9 10Z" fill="#E69F00" stroke="#CFC7B2" stroke-width="1"/>');
    expect(markup).toContain(
      '<text x="5" y="45" font-size="16" font-weight="600" text-anchor="middle" fill="#000000" stroke="#FFFFFF" ' +
        'stroke-width="4" stroke-linejoin="round" paint-order="stroke">R &lt; 5 mΩ</text>',
    );
  });

  it('puts a picture where its pixels are, and a dashed frame where they are not', () => {
    const pictureHref = (photoId: string) => `photos/${photoId}.jpg`;
    expect(svgMarkup(EVERY_MARK, { palette: BENCH, pictureHref })).toContain(
      '<image x="60" y="0" width="40" height="30" href="photos/ab.jpg" preserveAspectRatio="none"/>',
    );
    expect(svgMarkup(EVERY_MARK, { palette: BENCH })).not.toContain('<image');
  });

  it('never lets a text, a name or an address out of its place: <script>, quotes and ampersands are escaped', () => {
    const hostile = `</text><script>alert("1")</script>&'`;
    const drawing: Drawing = { ...words(hostile, hostile), marks: [...words(hostile).marks, EVERY_MARK.marks[5]!] };
    const markup = svgMarkup(drawing, { pictureHref: () => `x" onload="${hostile}` });
    expect(markup).not.toContain('<script');
    expect(markup).not.toContain('" onload="');
    expect(markup).toContain('&lt;/text&gt;&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt;&amp;&#39;</text>');
  });

  it('drops characters that no XML 1.0 file may hold, and keeps line ends, é and 🔋', () => {
    expect(svgMarkup(words('a\u0000b\u0008c\ud800d\uffffé🔋\n'))).toContain('>abcdé🔋\n</text>');
  });

  it('writes at most three decimals and no minus zero', () => {
    const drawing: Drawing = {
      width: 1,
      height: 1,
      alt: '',
      marks: [
        {
          kind: 'line',
          points: [
            [1 / 3, -0.00001],
            [2 / 3, 1],
          ],
          stroke: { ink: 'ink', width: 1 },
        },
      ],
    };
    expect(svgMarkup(drawing)).toContain('points="0.333,0 0.667,1"');
  });
});
