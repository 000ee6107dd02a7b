import type { Drawing } from '../../src/drawing/display-list.ts';

/** One of every kind of mark, with every option used, for the painters. */
export const EVERY_MARK: Drawing = {
  width: 100,
  height: 50,
  alt: 'All marks',
  marks: [
    {
      kind: 'line',
      points: [
        [0, 0],
        [10, 5],
        [20, 0],
      ],
      stroke: { ink: 'ink', width: 2, dash: [3, 1], cap: 'round', join: 'round' },
    },
    {
      kind: 'path',
      steps: [['M', 1, 2], ['L', 3, 4], ['C', 5, 6, 7, 8, 9, 10], ['Z']],
      fill: 'weak',
      stroke: { ink: 'line', width: 1 },
    },
    { kind: 'shape', shape: { form: 'box', x: 10, y: 20, width: 30, height: 10, radius: 4 }, fill: 'face' },
    { kind: 'shape', shape: { form: 'ellipse', cx: 50, cy: 25, rx: 6, ry: 3 }, stroke: { ink: 'muted', width: 1.5 } },
    {
      kind: 'text',
      x: 5,
      y: 45,
      text: 'R < 5 mΩ',
      size: 16,
      weight: 600,
      anchor: 'middle',
      ink: 'black',
      halo: { ink: 'white', width: 4 },
    },
    { kind: 'picture', x: 60, y: 0, width: 40, height: 30, photoId: 'ab' },
  ],
};
