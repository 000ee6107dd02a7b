import type { ComponentChildren } from 'preact';

interface FoldProps {
  title: string;
  /** What it is for, in a few words: read before it is opened. */
  hint: string;
  /** Which part of the screen it is. */
  part: string;
  children: ComponentChildren;
}

/** A part of a screen that is seldom needed: its name and what it is for stand there, the rest opens at a tap. */
export function Fold({ title, hint, part, children }: FoldProps) {
  return (
    <details class="fold" data-part={part}>
      <summary class="line">
        <span>
          <h2>{title}</h2>
          <span class="small muted fold-hint">{hint}</span>
        </span>
      </summary>
      <div class="stack">{children}</div>
    </details>
  );
}
