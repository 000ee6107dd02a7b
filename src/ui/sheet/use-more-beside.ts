import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';

/** Whether a box scrolls sideways at all, and whether more stands beyond its right edge just now. */
export function useMoreBeside<T extends HTMLElement>(): {
  box: RefObject<T | null>;
  scrolls: boolean;
  hasMore: boolean;
} {
  const box = useRef<T>(null);
  const [found, setFound] = useState({ scrolls: false, hasMore: false });
  useEffect(() => {
    const element = box.current;
    if (element === null) return;
    function look({ scrollWidth, clientWidth, scrollLeft }: HTMLElement) {
      const scrolls = scrollWidth > clientWidth + 1;
      const hasMore = scrollLeft + clientWidth < scrollWidth - 1;
      setFound((was) => (was.scrolls === scrolls && was.hasMore === hasMore ? was : { scrolls, hasMore }));
    }
    const onChange = () => look(element);
    const sizes = new ResizeObserver(onChange);
    sizes.observe(element);
    for (const child of element.children) sizes.observe(child);
    element.addEventListener('scroll', onChange, { passive: true });
    return () => {
      sizes.disconnect();
      element.removeEventListener('scroll', onChange);
    };
  }, []);
  return { box, ...found };
}
