/** The parts used here of two libraries that bring no types. */
declare module 'jstat' {
  const library: {
    jStat: {
      studentt: { inv(probability: number, freedom: number): number; cdf(t: number, freedom: number): number };
      normal: {
        inv(probability: number, mean: number, deviation: number): number;
        cdf(x: number, mean: number, deviation: number): number;
      };
      gamma: { cdf(x: number, shape: number, scale: number): number };
      beta: { cdf(x: number, alpha: number, beta: number): number };
    };
  };
  export default library;
}

declare module 'perspective-transform' {
  interface Transform {
    coeffs: number[];
    transform(x: number, y: number): [number, number];
    transformInverse(x: number, y: number): [number, number];
  }
  export default function perspectiveTransform(from: number[], to: number[]): Transform;
}
