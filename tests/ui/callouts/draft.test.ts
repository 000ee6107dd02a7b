import { describe, expect, it } from 'vitest';
import type { CalloutKind } from '../../../src/schema/callout.ts';
import { type Done, type Draft, type DraftContext, drawGesture } from '../../../src/ui/callouts/draft.ts';
import type { GestureEffect } from '../../../src/ui/callouts/gesture.ts';
import type { ShownCallout } from '../../../src/ui/callouts/shown-callout.ts';
import type { StagePoint } from '../../../src/ui/callouts/view.ts';

const PHOTO = { widthPx: 400, heightPx: 400 };
const ARROW: ShownCallout = {
  id: 'arrow',
  photoId: 'p',
  kind: 'arrow',
  points: [
    [0.25, 0.5],
    [0.75, 0.5],
  ],
  number: null,
};
const context = (change: Partial<DraftContext> = {}): DraftContext => ({
  tool: 'leader',
  callouts: [ARROW],
  chosen: null,
  finger: true,
  sizes: { shown: PHOTO, whole: PHOTO },
  toImage: ([x, y]) => [x / 400, y / 400],
  ...change,
});

/** Presses at the first point, drags through the others and lifts at the last. */
function played(
  path: StagePoint[],
  change: Partial<DraftContext> = {},
): { drafts: (Draft | null)[]; done: Done | null } {
  const moved = path.some(([x, y]) => Math.hypot(x - path[0]![0], y - path[0]![1]) >= 8);
  const effects: GestureEffect[] = [
    { kind: 'press', at: path[0]! },
    ...path.slice(1).map((_, at): GestureEffect => ({ kind: 'drag', path: path.slice(0, at + 2), moved })),
    { kind: 'release', path, tap: !moved },
  ];
  let draft: Draft | null = null;
  let done: Done | null = null;
  const drafts: (Draft | null)[] = [];
  for (const effect of effects) {
    const step = drawGesture(draft, effect, context(change));
    draft = step.draft;
    done = step.done;
    drafts.push(draft);
  }
  return { drafts, done };
}

describe('drawGesture', () => {
  it('draws a leader where nothing is, with a loupe under a finger and none under a mouse', () => {
    const { drafts, done } = played([[100, 50]]);
    expect(done).toMatchObject({ kind: 'drawn', points: [[0.25, 0.125], expect.anything()] });
    expect(drafts[0]?.loupe).toEqual([0.25, 0.125]);
    expect(played([[100, 50]], { finger: false }).drafts[0]?.loupe).toBeNull();
  });

  it('chooses a callout that is tapped, and draws when a drag begins on it', () => {
    expect(played([[200, 205]]).done).toEqual({ kind: 'chosen', id: 'arrow' });
    expect(
      played(
        [
          [200, 205],
          [200, 300],
        ],
        { tool: 'outline' },
      ).done,
    ).toMatchObject({ kind: 'drawn' });
  });

  it('moves the point of the chosen callout by as much as the finger moved, without a jump to it', () => {
    const { drafts, done } = played(
      [
        [110, 210],
        [150, 250],
      ],
      { chosen: ARROW },
    );
    // Taken hold of 10 px beside the point at (100, 200): it goes to (140, 240), not to (150, 250).
    expect(done).toEqual({
      kind: 'moved',
      id: 'arrow',
      points: [
        [0.35, 0.6],
        [0.75, 0.5],
      ],
    });
    expect(drafts[0]?.loupe).toEqual([0.25, 0.5]);
    expect(drafts[1]?.loupe).toEqual([0.35, 0.6]);
  });

  it('moves the whole of it when it is taken between its points', () => {
    const { done } = played(
      [
        [200, 200],
        [200, 240],
      ],
      { chosen: ARROW },
    );
    expect(done).toEqual({
      kind: 'moved',
      id: 'arrow',
      points: [
        [0.25, 0.6],
        [0.75, 0.6],
      ],
    });
  });

  it('changes nothing when the chosen callout is only tapped', () => {
    const { drafts, done } = played(
      [
        [102, 201],
        [103, 203],
      ],
      { chosen: ARROW },
    );
    expect(done).toBeNull();
    expect(drafts[1]).toMatchObject({ kind: 'move', points: ARROW.points });
  });

  it('draws nothing from 25 px beside the photo on, and lets go of what was chosen', () => {
    expect(
      played(
        [
          [200, -25],
          [200, 60],
        ],
        { chosen: ARROW },
      ).done,
    ).toEqual({ kind: 'chosen', id: null });
    expect(played([[200, -24]]).drafts[0]?.loupe).toEqual([0.5, 0]);
    expect(played([[200, -24]]).done).toMatchObject({ kind: 'drawn', points: [[0.5, 0], expect.anything()] });
  });

  it.each(['outline', 'cover', 'arrow', 'stroke'] as CalloutKind[])(
    'lets go of the chosen callout on a tap beside it: %s',
    (tool) => {
      expect(played([[50, 50]], { tool, chosen: ARROW }).done).toEqual({ kind: 'chosen', id: null });
    },
  );

  it('shows no loupe for a box', () => {
    expect(
      played(
        [
          [50, 50],
          [90, 90],
        ],
        { tool: 'outline' },
      ).drafts[1]?.loupe,
    ).toBeNull();
  });

  it('leaves nothing behind when the finger is taken away', () => {
    const pressed = drawGesture(null, { kind: 'press', at: [50, 50] }, context()).draft;
    expect(drawGesture(pressed, { kind: 'abandon' }, context())).toEqual({ draft: null, done: null });
  });
});
