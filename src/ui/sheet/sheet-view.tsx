import type { ComponentChildren } from 'preact';
import type { Section, Sheet, SheetPhoto } from '../../sheet/model/sheet.ts';
import { SheetBlock } from './sheet-block.tsx';

export interface SheetViewProps {
  sheet: Sheet;
  /** Draws one photo; the caller knows where its pixels are. */
  photo: (photo: SheetPhoto) => ComponentChildren;
}

/** The Sheet on screen: a page of the lab notebook, whatever the theme around it. */
export function SheetView({ sheet, photo }: SheetViewProps) {
  const { head } = sheet;
  // That another sheet counts, or more has come in, is said before anything else.
  const warns = head.standing?.tone === 'caution';
  return (
    <article class="sheet" data-theme="paper" lang={sheet.language} aria-label={sheet.title}>
      <header>
        {warns && head.standing && <SheetBlock block={head.standing} photo={photo} />}
        <p class="small muted">{head.overline}</p>
        <h2 class="sheet-name">{head.name}</h2>
        <p>{head.line}</p>
        <p class="marks">
          {head.marks.map((mark) => (
            <span key={mark} class="mark">
              {mark}
            </span>
          ))}
        </p>
        {!warns && head.standing && <SheetBlock block={head.standing} photo={photo} />}
        <p class="small muted">{head.caution}</p>
      </header>
      {sheet.sections.map((section) => (
        <SheetSection key={section.id} section={section} photo={photo} />
      ))}
      <footer class="small muted">{sheet.madeBy}</footer>
    </article>
  );
}

function SheetSection({ section, photo }: { section: Section; photo: SheetViewProps['photo'] }) {
  return (
    <section id={`sheet-${section.id}`}>
      {section.headed && <h2>{section.title}</h2>}
      {section.blocks.map((block, index) => (
        <SheetBlock key={index} block={block} photo={photo} />
      ))}
    </section>
  );
}
