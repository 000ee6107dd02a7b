export type Point = [x: number, y: number];

/** Turns a point about a centre. With y downwards a positive angle is clockwise, as in SVG. */
export function turnPoint(point: Point, angleDeg: number, centre: Point): Point {
  const angleRad = (angleDeg * Math.PI) / 180;
  const x = point[0] - centre[0];
  const y = point[1] - centre[1];
  const cos = Math.cos(angleRad);
  const sin = Math.sin(angleRad);
  return [centre[0] + x * cos - y * sin, centre[1] + x * sin + y * cos];
}
