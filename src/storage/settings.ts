/**
 * What this phone prefers: a few words that must be known before the first paint, so they are not in the database.
 * A private session may refuse the store; then the defaults hold until the page is closed.
 */
export interface Settings {
  theme: 'bench' | 'paper';
  hand: 'right' | 'left';
  units: 'metric' | 'imperial';
  paper: 'a4' | 'letter';
}

const KEY = 'underlid.settings';
const CHOICES: { [K in keyof Settings]: readonly Settings[K][] } = {
  theme: ['bench', 'paper'],
  hand: ['right', 'left'],
  units: ['metric', 'imperial'],
  paper: ['a4', 'letter'],
};
/** The first of each list is the default. */
export const DEFAULT_SETTINGS: Settings = { theme: 'bench', hand: 'right', units: 'metric', paper: 'a4' };

export function readSettings(): Settings {
  let stored: unknown = null;
  try {
    stored = JSON.parse(localStorage.getItem(KEY) ?? 'null');
  } catch (error) {
    console.warn('settings: not readable, defaults are used', error);
  }
  const found = typeof stored === 'object' && stored !== null ? (stored as Record<string, unknown>) : {};
  const settings = { ...DEFAULT_SETTINGS };
  for (const name of Object.keys(CHOICES) as (keyof Settings)[]) take(settings, name, found[name]);
  return settings;
}

export function writeSettings(settings: Settings): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(settings));
  } catch (error) {
    console.warn('settings: not kept', error);
  }
}

function take<K extends keyof Settings>(settings: Settings, name: K, value: unknown): void {
  const known = CHOICES[name].find((choice) => choice === value);
  if (known !== undefined) settings[name] = known;
}
