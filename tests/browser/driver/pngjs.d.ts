/** The part of pngjs that tests use; the package brings no types. */
declare module 'pngjs' {
  export const PNG: {
    sync: { read(bytes: Uint8Array): { width: number; height: number; data: Uint8Array } };
  };
}
