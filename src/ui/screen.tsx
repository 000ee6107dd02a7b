import { type ComponentChildren, createContext } from 'preact';
import { useContext, useEffect, useRef } from 'preact/hooks';

interface ScreenProps {
  title: ComponentChildren;
  /** Second, quieter half of the title line. */
  quiet?: string;
  back?: { href: string; label: string };
  /** Middle of the head: the way to help on smoke. */
  middle?: ComponentChildren;
  /** End of the head: saved mark, position. */
  end?: ComponentChildren;
  /** A thin row below the head that stays in view. */
  under?: ComponentChildren;
  /** Actions under the thumb. */
  dock?: ComponentChildren;
  children: ComponentChildren;
  /** The heading is the item's question, set larger by the caller. */
  titleClass?: string;
  dockClass?: string;
}

/** What stands under the head of every screen within, before the screen's own row. */
export const UnderHead = createContext<ComponentChildren>(null);

/** The frame of every screen. */
export function Screen(props: ScreenProps) {
  const { title, quiet, back, middle, end, under, dock, children, titleClass, dockClass } = props;
  const heading = useRef<HTMLHeadingElement>(null);
  // A new screen is announced by its heading, as a page of its own would be.
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    document.title = `${heading.current?.textContent ?? ''} · Underlid`;
  }, []);
  return (
    <div class="screen">
      <header class="head">
        <div class="head-row">
          {back ? (
            <a class="back" href={back.href}>
              <span>‹ {back.label}</span>
            </a>
          ) : (
            <span />
          )}
          <div>{middle}</div>
          <div class="head-end">{end}</div>
        </div>
        {useContext(UnderHead)}
        {under}
      </header>
      <main class="body">
        <h1 ref={heading} class={titleClass} tabIndex={-1}>
          {title}
          {quiet && <span class="quiet"> {quiet}</span>}
        </h1>
        {children}
      </main>
      {dock && <nav class={dockClass ? `dock ${dockClass}` : 'dock'}>{dock}</nav>}
    </div>
  );
}
