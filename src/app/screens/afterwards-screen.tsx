import type { Afterwards } from '../../schema/afterwards.ts';
import { afterwardsWords as say } from '../../text/afterwards.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { DayField } from '../../ui/fields/day-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { Screen } from '../../ui/screen.tsx';
import { backToPack } from '../back-to-pack.ts';
import { SavedLine } from '../parts/saved-line.tsx';
import { hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';

/** What became of the sample, and the tester's own words for the sheet. */
export function AfterwardsScreen({ session }: { session: PackSession }) {
  const record = session.record.value;
  const { afterwards, words: own } = record;
  const put = (subject: 'afterwards' | 'words', part: string, value: string | null, label: string) =>
    void session.put({
      puts: [value === null || value === '' ? { subject, part, gone: true } : { subject, part, v: value }],
      undoLabel: label,
    });
  const ownWords = (part: keyof typeof own, lines: 'one' | 'many') => (
    <TextField
      id={part}
      label={say[part]}
      value={own[part] ?? ''}
      lines={lines}
      maxLength={lines === 'many' ? 2000 : 120}
      onChange={(text) => put('words', part, text, say[part])}
    />
  );

  return (
    <Screen
      title={say.title}
      back={backToPack(record)}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          <a class="button primary" href={hrefTo(record.packId, 'sheet')}>
            {say.toSheet}
          </a>
        </>
      }
    >
      <p class="muted">{say.lead}</p>
      <ChoiceField
        label={say.fate}
        choices={choicesOf<NonNullable<Afterwards['fate']>>(say.fates)}
        chosen={afterwards.fate ?? null}
        onChoose={(fate) => put('afterwards', 'fate', fate, say.fates[fate])}
        onClear={() => put('afterwards', 'fate', null, say.fate)}
      />
      {afterwards.fate === 'closed-again' && <p class="notice">{say.closedAgain}</p>}
      <DayField
        id="on"
        label={say.on}
        value={afterwards.on ?? ''}
        onChange={(day) => put('afterwards', 'on', day, say.on)}
      />
      <ChoiceField
        label={say.cells}
        choices={choicesOf<NonNullable<Afterwards['cells']>>(say.cellFates)}
        chosen={afterwards.cells ?? null}
        onChoose={(fate) => put('afterwards', 'cells', fate, say.cellFates[fate])}
        onClear={() => put('afterwards', 'cells', null, say.cells)}
      />
      <TextField
        id="where"
        label={say.where}
        value={afterwards.where ?? ''}
        onChange={(text) => put('afterwards', 'where', text, say.where)}
      />
      <TextField
        id="note"
        label={say.note}
        value={afterwards.note ?? ''}
        lines="many"
        maxLength={2000}
        onChange={(text) => put('afterwards', 'note', text, say.note)}
      />
      <h2>{say.ownWords}</h2>
      {ownWords('opinion', 'many')}
      {ownWords('method', 'many')}
      {ownWords('makerReply', 'many')}
      {ownWords('signedAs', 'one')}
    </Screen>
  );
}

function choicesOf<T extends string>(texts: Readonly<Record<T, string>>): { id: T; text: string }[] {
  return (Object.keys(texts) as T[]).map((id) => ({ id, text: texts[id] }));
}
