import type { Fact } from '../../schema/checklist.ts';
import { factWords, itemWords } from '../../text/item.ts';
import { Screen } from '../../ui/screen.tsx';
import { SafetyLine } from '../parts/safety-line.tsx';
import { SavedLine } from '../parts/saved-line.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { homeOf, placeAmong } from '../question-place.ts';
import { isClosed } from '../questions.ts';
import { goTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';

/** A fact about the pack: no grade, but it decides what else is asked. */
export function FactScreen({ session, fact }: { session: PackSession; fact: Fact }) {
  const record = session.record.value;
  const asking = { definition: session.definition.definition, record, grading: session.grading.value };
  const place = placeAmong(asking, { kind: 'fact', fact, open: false });
  const chosen = record.facts[fact.id];

  function choose(choice: string, text: string) {
    const puts =
      choice === chosen
        ? [{ subject: 'fact', part: fact.id, gone: true as const }]
        : [{ subject: 'fact', part: fact.id, v: { choice } }];
    void session.put({ puts, undoLabel: choice === chosen ? factWords.clear : factWords.answered(fact.ask, text) });
  }
  return (
    <Screen
      title={fact.ask}
      titleClass="question"
      back={{ href: homeOf(record.packId, fact), label: place.homeTitle }}
      middle={<SmokeHelp record={record} />}
      end={<span class="saved">{place.position}</span>}
      {...(!isClosed(fact.state) && { under: <SafetyLine session={session} /> })}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          <button type="button" class="button primary" onClick={() => goTo(place.nextHref)}>
            {place.isLast ? itemWords.lastOne : itemWords.next}
          </button>
        </>
      }
    >
      <p class="muted">{fact.look ?? factWords.about}</p>
      <div class="push answers" role="radiogroup" aria-label={fact.ask}>
        {fact.choices.map(({ id, text }) => (
          // biome-ignore lint/a11y/useSemanticElements: dressed as a button, answers like a radio
          <button
            key={id}
            type="button"
            class="answer fact"
            role="radio"
            aria-checked={chosen === id}
            onClick={() => choose(id, text)}
          >
            <span class="sentence">{text}</span>
          </button>
        ))}
      </div>
    </Screen>
  );
}
