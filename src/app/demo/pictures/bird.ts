import type { Ink, Mark, PathStep } from '../../../drawing/display-list.ts';
import { disc, line, path } from './marks.ts';

export interface Bird {
  kind: 'wren' | 'dipper';
  /** Middle of its body, and how long that is. */
  at: readonly [x: number, y: number];
  size: number;
  ink: Ink;
}

/** The badge of an invented maker: a wren with its tail up, or a dipper on its stone. */
export function bird({ kind, at: [cx, cy], size, ink }: Bird): Mark[] {
  const x = (share: number) => cx + share * size;
  const y = (share: number) => cy + share * size;
  const leg = (from: number) =>
    line([x(from), y(0.24), x(from + 0.02), y(0.46)], { ink, width: size * 0.035, cap: 'round' });
  const body: PathStep[] = [
    ['M', x(-0.5), y(-0.12)],
    ['C', x(-0.38), y(-0.36), x(-0.1), y(-0.34), x(0.02), y(-0.16)],
    ['C', x(0.16), y(-0.16), x(0.26), y(-0.12), x(0.32), y(-0.04)],
    ...(kind === 'wren' ? cockedTail(x, y) : lowTail(x, y)),
    ['C', x(0.26), y(0.24), x(0.04), y(0.32), x(-0.14), y(0.26)],
    ['C', x(-0.34), y(0.2), x(-0.4), y(0.04), x(-0.4), y(-0.06)],
    ['Z'],
  ];
  return [
    leg(-0.08),
    leg(0.06),
    path(body, { fill: ink }),
    ...(kind === 'dipper' ? bib(x, y) : []),
    disc([x(-0.3), y(-0.16)], size * 0.03, { fill: 'white' }),
    line([x(-0.3), y(0.47), x(0.3), y(0.47)], { ink, width: size * 0.05, cap: 'round' }),
  ];
}

type Place = (share: number) => number;

function cockedTail(x: Place, y: Place): PathStep[] {
  return [
    ['L', x(0.46), y(-0.44)],
    ['L', x(0.58), y(-0.38)],
    ['L', x(0.42), y(0.04)],
  ];
}

function lowTail(x: Place, y: Place): PathStep[] {
  return [
    ['L', x(0.6), y(-0.02)],
    ['L', x(0.6), y(0.08)],
    ['L', x(0.36), y(0.1)],
  ];
}

/** A dipper's white throat. */
function bib(x: Place, y: Place): Mark[] {
  const steps: PathStep[] = [
    ['M', x(-0.39), y(-0.04)],
    ['C', x(-0.28), y(-0.08), x(-0.16), y(-0.02), x(-0.14), y(0.08)],
    ['C', x(-0.16), y(0.16), x(-0.26), y(0.18), x(-0.32), y(0.14)],
    ['C', x(-0.37), y(0.08), x(-0.39), y(0.02), x(-0.39), y(-0.04)],
    ['Z'],
  ];
  return [path(steps, { fill: 'white' })];
}
