import { type Browser, type BrowserContextOptions, chromium } from 'playwright-core';
import { findBrowser } from '../../../.ci/find-browser.mjs';

/** A quiet browser: no sandbox (containers), no calls home. */
export const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A common phone, held upright. */
export const PHONE = {
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 2,
  hasTouch: true,
  isMobile: true,
  acceptDownloads: true,
  timezoneId: 'Europe/Vienna',
  locale: 'en-GB',
} satisfies BrowserContextOptions;

export function launchBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: browserPath(), args: FLAGS });
}

export function browserPath(): string {
  const path = findBrowser();
  if (path === null) throw new Error('No browser of the Chromium family was found; CHROME_PATH may name one.');
  return path;
}
