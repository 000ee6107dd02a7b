import { roundedPoint } from '../../drawing/simplify-stroke.ts';
import type { CalloutKind, ImagePoint } from '../../schema/callout.ts';
import type { GestureEffect } from './gesture.ts';
import { calloutAt, editingFrame, type Grip, gripAt } from './grip.ts';
import { draftFromPath, movedPoint, movedWhole, type PhotoSize, pointsFromPath } from './shape-callout.ts';
import type { ShownCallout } from './shown-callout.ts';
import type { StagePoint } from './view.ts';

/** What a finger on the stage is about to do. `loupe` is the spot of the picture to magnify, if it is covered. */
export type Draft =
  | { kind: 'new'; points: ImagePoint[] | null; loupe: ImagePoint | null }
  | {
      kind: 'move';
      callout: ShownCallout;
      grip: Grip;
      from: ImagePoint;
      points: ImagePoint[];
      loupe: ImagePoint | null;
    }
  | { kind: 'on'; id: string; loupe: null }
  | { kind: 'off'; loupe: null };

/** What it did. */
export type Done =
  | { kind: 'drawn'; points: ImagePoint[] }
  | { kind: 'moved'; id: string; points: ImagePoint[] }
  | { kind: 'chosen'; id: string | null };

export interface DraftContext {
  tool: CalloutKind;
  callouts: readonly ShownCallout[];
  chosen: ShownCallout | null;
  /** Something thick covers the spot. */
  finger: boolean;
  sizes: { shown: PhotoSize; whole: PhotoSize };
  toImage: (at: StagePoint) => ImagePoint;
}

export interface DraftStep {
  draft: Draft | null;
  done: Done | null;
}

/** Kinds with a point that has to sit exactly where the finger is. */
const PRECISE: readonly CalloutKind[] = ['leader', 'arrow', 'text'];

/**
 * One finger's press, drag and release. The chosen callout is taken hold of first; a tap on another chooses it; anything
 * else draws. A drag that begins on a callout draws as well: only a tap chooses.
 */
export function drawGesture(draft: Draft | null, effect: GestureEffect, context: DraftContext): DraftStep {
  switch (effect.kind) {
    case 'press':
      return { draft: pressed(effect.at, context), done: null };
    case 'drag': {
      if (draft === null || draft.kind === 'off') return { draft, done: null };
      const path = effect.path.map(context.toImage);
      if (draft.kind === 'move') return { draft: effect.moved ? dragged(draft, path, context) : draft, done: null };
      if (draft.kind === 'on' && !effect.moved) return { draft, done: null };
      return { draft: drawing(path, context), done: null };
    }
    case 'release':
      return { draft: null, done: draft === null ? null : released(draft, effect, context) };
    default:
      return { draft: null, done: null };
  }
}

function pressed(at: StagePoint, context: DraftContext): Draft {
  const { callouts, chosen, sizes, toImage } = context;
  const from = toImage(at);
  const frame = editingFrame(sizes.shown, sizes.whole);
  const shownAt: StagePoint = [from[0] * frame.widthPx, from[1] * frame.heightPx];
  const grip = chosen === null ? null : gripAt(chosen, shownAt, frame);
  if (chosen !== null && grip !== null) {
    return dragged({ kind: 'move', callout: chosen, grip, from, points: chosen.points, loupe: null }, [from], context);
  }
  const under = calloutAt(callouts, shownAt, frame);
  if (under !== null) return { kind: 'on', id: under.id, loupe: null };
  return isBeside(shownAt, frame) ? { kind: 'off', loupe: null } : drawing([from], context);
}

/** A press on the ground beside the photo draws nothing; close to its edge the edge is meant. */
function isBeside([x, y]: StagePoint, { widthPx, heightPx }: PhotoSize): boolean {
  const beside = Math.max(-x, x - widthPx, -y, y - heightPx);
  return beside > EDGE_REACH_PX;
}
/** Half of what a finger needs. */
const EDGE_REACH_PX = 24;

function drawing(path: ImagePoint[], { tool, finger, sizes }: DraftContext): Draft {
  const last = path.at(-1);
  const loupe = finger && last !== undefined && PRECISE.includes(tool) ? roundedPoint(last) : null;
  return { kind: 'new', points: draftFromPath(tool, path, sizes), loupe };
}

/** The point keeps its distance from the finger, so that taking hold of it does not move it. */
function dragged(draft: Draft & { kind: 'move' }, path: ImagePoint[], { finger }: DraftContext): Draft {
  const { callout, grip, from } = draft;
  const to = path.at(-1) ?? from;
  const by: ImagePoint = [to[0] - from[0], to[1] - from[1]];
  if (grip.kind === 'whole') return { ...draft, points: movedWhole(callout.points, by) };
  const point = callout.points[grip.place] ?? from;
  const points = movedPoint(callout.points, grip.place, [point[0] + by[0], point[1] + by[1]]);
  return { ...draft, points, loupe: finger ? (points[grip.place] ?? null) : null };
}

function released(draft: Draft, effect: GestureEffect & { kind: 'release' }, context: DraftContext): Done | null {
  if (draft.kind === 'off') return { kind: 'chosen', id: null };
  if (draft.kind === 'on') return { kind: 'chosen', id: draft.id };
  if (draft.kind === 'move') return effect.tap ? null : { kind: 'moved', id: draft.callout.id, points: draft.points };
  const points = pointsFromPath(context.tool, effect.path.map(context.toImage), context.sizes);
  if (points !== null) return { kind: 'drawn', points };
  return effect.tap ? { kind: 'chosen', id: null } : null;
}
