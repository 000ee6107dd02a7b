/** The strip of masking tape with a pack's name. */
export function Tape({ children }: { children: string }) {
  return <span class="tape">{children}</span>;
}
