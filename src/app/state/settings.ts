import { effect, signal } from '@preact/signals';
import { readSettings, type Settings, writeSettings } from '../../storage/settings.ts';

export const settings = signal<Settings>(readSettings());

export function setSetting<K extends keyof Settings>(name: K, value: Settings[K]): void {
  settings.value = { ...settings.value, [name]: value };
  writeSettings(settings.value);
}

/** Theme and hand are attributes of the page, so that the styles follow without a redraw. */
export function showSettings(): void {
  effect(() => {
    document.documentElement.dataset.theme = settings.value.theme;
    document.documentElement.dataset.hand = settings.value.hand;
    const ground = settings.value.theme === 'bench' ? '#16191C' : '#F6F2E7';
    document.querySelector('meta[name="theme-color"]')?.setAttribute('content', ground);
  });
}
