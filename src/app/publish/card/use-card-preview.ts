import { useEffect, useState } from 'preact/hooks';
import { type MakeCard, makeCard } from './make-card.ts';

export interface CardPreview {
  url: string | null;
  failed: boolean;
  missingCount: number;
}

/** The card as it will be handed over, drawn anew whenever `key` changes; the old one stays in sight until then. */
export function useCardPreview(card: MakeCard, key: string): CardPreview {
  const [preview, setPreview] = useState<CardPreview>({ url: null, failed: false, missingCount: 0 });
  // `key` says all of `card`, which is a new object every time.
  useEffect(() => {
    let left = false;
    async function draw() {
      try {
        const { file, missingCount } = await makeCard(card);
        if (left) return;
        setPreview({ url: URL.createObjectURL(file), failed: false, missingCount });
      } catch (error) {
        console.error('picture card: not drawn', error);
        if (!left) setPreview({ url: null, failed: true, missingCount: 0 });
      }
    }
    void draw();
    return () => {
      left = true;
    };
  }, [key]);
  useEffect(() => () => (preview.url === null ? undefined : URL.revokeObjectURL(preview.url)), [preview.url]);
  return preview;
}
