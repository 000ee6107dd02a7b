import { liveTestsWords as say } from '../../text/live-tests/live-tests.ts';
import { Screen } from '../../ui/screen.tsx';
import { backToPack } from '../back-to-pack.ts';
import { DeliveredLine } from '../live-tests/delivered-line.tsx';
import { LIVE_TEST_PARTS } from '../live-tests/live-test-parts.ts';
import { PartLines } from '../live-tests/part-lines.tsx';
import '../live-tests/live-tests.css';
import { QuestionList } from '../parts/question-list.tsx';
import { SavedLine } from '../parts/saved-line.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { hrefOf } from '../question-place.ts';
import { questionsOf } from '../questions.ts';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';

/** The closed pack run: promised against delivered, a line per kind of test, then what the tests show. */
export function LiveTestsScreen({ session }: { session: PackSession }) {
  const record = session.record.value;
  const grading = session.grading.value;
  const asking = { definition: session.definition.definition, record, grading };
  const questions = questionsOf(asking, 'loaded');
  const next = questions.find(({ open }) => open);
  const makeSafe = hrefTo(record.packId, 'make-safe');

  return (
    <Screen
      title={say.title}
      back={backToPack(record)}
      middle={<SmokeHelp record={record} />}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          {next && (
            <a class="button" href={makeSafe}>
              {say.toMakeSafeNow}
            </a>
          )}
          <button
            type="button"
            class="button primary"
            onClick={() => goTo(next ? hrefOf(record.packId, next) : makeSafe)}
          >
            {next ? say.goOn : say.toMakeSafe}
          </button>
        </>
      }
    >
      <DeliveredLine record={record} />
      <p class="muted">{say.lead}</p>
      <section class="stack">
        <h2>{say.tests}</h2>
        <PartLines record={record} parts={LIVE_TEST_PARTS.filter(({ belongs }) => belongs === 'closed')} />
      </section>
      {questions.length > 0 && (
        <section class="stack">
          <h2>{say.questions}</h2>
          <p class="muted small">{say.questionsLead}</p>
          <QuestionList asking={asking} questions={questions} />
        </section>
      )}
    </Screen>
  );
}
