import './card/card.css';
import type { ComponentProps } from 'preact';
import { useState } from 'preact/hooks';
import type { CardShape } from '../../sheet/card/card-drawing.ts';
import { type ChosenFinding, cardModel, defaultFindings, MOST_FINDINGS } from '../../sheet/card/card-model.ts';
import { type SheetInput, sheetContext } from '../../sheet/model/sheet-context.ts';
import { cardWords as say } from '../../text/card.ts';
import { closingWords } from '../../text/closing-screens.ts';
import { words } from '../../text/words.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { Screen } from '../../ui/screen.tsx';
import { HandOver } from '../parts/hand-over.tsx';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { FindingChoice } from './card/finding-choice.tsx';
import { type CardGround, makeCard } from './card/make-card.ts';
import { useCardPreview } from './card/use-card-preview.ts';
import { usePublishedInput } from './use-published-input.ts';

const SHAPES: readonly { id: CardShape; text: string }[] = [
  { id: 'landscape', text: say.shape.landscape },
  { id: 'portrait', text: say.shape.portrait },
];
const GROUNDS: readonly { id: CardGround; text: string }[] = [
  { id: 'paper', text: say.ground.paper },
  { id: 'bench', text: say.ground.bench },
  { id: 'clear', text: say.ground.clear },
];

/** One picture of the pack: what it will look like, what stands on it, and the file. */
export function CardPage({ session }: { session: PackSession }) {
  const published = usePublishedInput(session);
  const frame = {
    title: say.title,
    back: { href: hrefTo(session.packId, 'publish'), label: say.back },
    end: session.record.value.demo && <span class="mark">{words.inventedDemo}</span>,
  };
  if (published !== 'reading') return <Card frame={frame} input={published.input} />;
  return (
    <Screen {...frame}>
      <p role="status">{closingWords.reading}</p>
    </Screen>
  );
}

function Card({ frame, input }: { frame: Omit<ComponentProps<typeof Screen>, 'children'>; input: SheetInput }) {
  const [shape, setShape] = useState<CardShape>('landscape');
  const [ground, setGround] = useState<CardGround>('paper');
  const [picked, setPicked] = useState<readonly ChosenFinding[] | null>(null);
  const context = sheetContext(input);
  const { findings } = context.grading;
  const chosen = picked ?? defaultFindings(input);
  const model = cardModel(input, chosen);
  const card = { model, shape, ground };
  const preview = useCardPreview(card, JSON.stringify(card));

  function change(itemId: string, now: ChosenFinding | null) {
    const place = chosen.findIndex((one) => one.itemId === itemId);
    if (now === null) setPicked(chosen.filter((one) => one.itemId !== itemId));
    else if (place === -1) setPicked([...chosen, now]);
    else setPicked(chosen.with(place, now));
  }

  return (
    <Screen {...frame} dock={<HandOver label={say.make} make={async () => (await makeCard(card)).file} primary />}>
      <div class="stack">
        <div class={`card-preview ${shape} ${ground}`}>
          {preview.url !== null && (
            <img src={preview.url} alt={say.alt(model.name, model.verdict.title, model.score.label)} />
          )}
          {preview.url === null && <p role="status">{preview.failed ? say.notDrawn : say.drawing}</p>}
        </div>
        {preview.missingCount > 0 && <p class="notice">{say.missing(preview.missingCount)}</p>}
        <ChoiceField label={say.shape.label} choices={SHAPES} chosen={shape} onChoose={setShape} />
        <ChoiceField label={say.ground.label} choices={GROUNDS} chosen={ground} onChoose={setGround} />
        <p class="small muted">{ground === 'clear' ? say.clearHint : say.lead}</p>
        <section class="stack">
          <h2>{say.findings(chosen.length)}</h2>
          {findings.length === 0 && <p>{say.none}</p>}
          {chosen.length === MOST_FINDINGS && findings.length > MOST_FINDINGS && <p class="small muted">{say.full}</p>}
          <ul class="plain">
            {findings.map((finding) => (
              <FindingChoice
                key={finding.itemId}
                context={context}
                finding={finding}
                chosen={chosen.find(({ itemId }) => itemId === finding.itemId) ?? null}
                full={chosen.length === MOST_FINDINGS}
                onChange={(now) => change(finding.itemId, now)}
              />
            ))}
          </ul>
        </section>
      </div>
    </Screen>
  );
}
