import type { Settings } from '../../storage/settings.ts';
import { keepWords as say } from '../../text/keep.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { Fold } from '../parts/fold.tsx';
import { setSetting, settings } from '../state/settings.ts';

/** How this phone shows things. */
export function LookPart() {
  return (
    <Fold title={say.look} hint={say.lookHint} part="look">
      <SettingChoice name="theme" label={say.theme} texts={say.themes} />
      <SettingChoice name="hand" label={say.hand} texts={say.hands} />
      <SettingChoice name="units" label={say.units} texts={say.unitChoices} />
      <SettingChoice name="paper" label={say.paper} texts={say.papers} />
    </Fold>
  );
}

interface SettingChoiceProps<K extends keyof Settings> {
  name: K;
  label: string;
  texts: Readonly<Record<Settings[K], string>>;
}

function SettingChoice<K extends keyof Settings>({ name, label, texts }: SettingChoiceProps<K>) {
  const ids = Object.keys(texts) as Settings[K][];
  return (
    <ChoiceField
      label={label}
      choices={ids.map((id) => ({ id, text: texts[id] }))}
      chosen={settings.value[name]}
      onChoose={(id) => setSetting(name, id)}
    />
  );
}
