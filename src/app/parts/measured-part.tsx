import type { ItemResult } from '../../grading/grading.ts';
import type { Answer } from '../../schema/answer.ts';
import type { Item } from '../../schema/checklist.ts';
import { foundWords } from '../../sheet/model/measured-words.ts';
import { measuredWords as say } from '../../text/measured.ts';
import { NumberField } from '../../ui/fields/number-field.tsx';

interface MeasuredPartProps {
  item: Item;
  result: ItemResult | undefined;
  answer: Answer | undefined;
  /** Whose boxes these are: the pack's id. */
  owner: string;
  /** Where the tests are that an item is derived from. */
  testsHref: string;
  onValue: (inputId: string, value: number | null) => void;
}

/** Above the sentences of a measured or derived item: boxes for its readings, or what the live tests say. */
export function MeasuredPart({ item, result, answer, owner, testsHref, onValue }: MeasuredPartProps) {
  const found = result ? foundWords(item, result.measured) : null;
  const possible = result?.measured?.possible ?? [];
  const overrules = result?.measured?.overrules ?? null;
  if (item.kind === 'look') return null;
  const values = answer?.kind === 'readings' ? answer.values : {};
  const lines = found === null ? [] : [say.line(found, possible)];
  if (overrules !== null) lines.push(say.overruled(overrules));
  else if (found !== null && possible.length > 1) lines.push(say.part);
  return (
    <section class="stack measured" aria-label={item.kind === 'measure' ? say.title : say.fromTests}>
      {item.measure?.inputs.map(({ id, title, unit, least, most }) => (
        <NumberField
          key={id}
          id={`reading-${id}`}
          owner={`${owner}/${item.id}`}
          label={title}
          unit={unit === 'cells' ? '' : unit}
          value={Object.hasOwn(values, id) ? (values[id] ?? null) : null}
          onChange={(value) => onValue(id, value)}
          check={(value) => (value >= least && value <= most ? null : say.outOfReach(least, most))}
          whole={unit === 'cells'}
          signed={least < 0}
        />
      ))}
      <p class="notice calm small" role="status">
        {lines.length > 0 ? lines.join(' ') : item.kind === 'derive' ? say.notTested : missing(item, values)}
      </p>
      {item.kind === 'derive' && (
        <a class="button" href={testsHref}>
          {item.derive?.from === 'coldCharge' || item.derive?.from === 'hot' ? say.openSensorTests : say.openTests}
        </a>
      )}
    </section>
  );
}

/** All is typed and still nothing comes of it: then the Nameplate lacks what it is held against. */
function missing({ measure }: Item, values: Readonly<Record<string, number>>): string {
  const complete = measure?.inputs.every(({ id }) => Object.hasOwn(values, id)) ?? false;
  return complete ? say.needsNameplate : say.notYet;
}
