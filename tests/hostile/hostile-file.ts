/** What must become of a hostile file. */
export type Expected =
  /** `reason`: the name the reader gives it; of a definition, part of what it says of a place. */
  | { is: 'refused'; reason: string }
  /** As plain text. `changed`: characters taken out, which are listed to the person; none where it comes in as it is. */
  | { is: 'taken'; changed: readonly string[] };

export interface HostileFile {
  name: string;
  kind: 'bundle' | 'definition' | 'log' | 'picture';
  bytes(): Promise<Uint8Array<ArrayBuffer>>;
  expect: Expected;
}

export const refused = (reason: string): Expected => ({ is: 'refused', reason });
export const taken = (...changed: string[]): Expected => ({ is: 'taken', changed });

export const utf8 = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text);
