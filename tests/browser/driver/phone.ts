import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { inject } from 'vitest';
import { browserPath, FLAGS, PHONE } from './launch.ts';

/** An emulated phone with the app open on it, and what it did behind the screen. */
export interface Phone {
  context: BrowserContext;
  page: Page;
  /** Addresses of all requests of the page, its workers and its service worker. */
  requests: string[];
  /** Errors and refusals of the content policy, from the console and uncaught. */
  complaints: string[];
}

/** A name of no file of the app: whoever asks for it asks the server. A refusal of it is no complaint. */
export const NOT_KEPT = 'not-kept.txt';

/** A phone that has never seen the app. */
export async function emptyPhone(browser: Browser, options: BrowserContextOptions = {}): Promise<Phone> {
  return started(await browser.newContext({ ...PHONE, ...options }));
}

/** A phone whose storage lies in a folder, so that it is there after the browser has ended. */
export async function phoneWithProfile(folder: string, options: { offline?: boolean } = {}): Promise<Phone> {
  const executablePath = browserPath();
  return started(await chromium.launchPersistentContext(folder, { executablePath, args: FLAGS, ...PHONE, ...options }));
}

export function appUrl(hash = ''): string {
  return `${inject('appUrl')}${hash}`;
}

/** Every request went to the server of the app, or was a picture the app itself made. */
export function strangers({ requests }: Pick<Phone, 'requests'>): string[] {
  const origin = new URL(appUrl()).origin;
  return requests.filter((url) => !url.startsWith(`${origin}/`) && !url.startsWith(`blob:${origin}/`));
}

async function started(context: BrowserContext): Promise<Phone> {
  const requests: string[] = [];
  const complaints: string[] = [];
  context.on('request', (request) => requests.push(request.url()));
  context.on('weberror', (error) => complaints.push(String(error.error())));
  context.on('console', (message) => {
    const bad = message.type() === 'error' || message.text().includes('Content Security Policy');
    if (bad && !message.location().url.endsWith(NOT_KEPT)) complaints.push(message.text());
  });
  context.setDefaultTimeout(10_000);
  const page = context.pages()[0] ?? (await context.newPage());
  await page.goto(appUrl());
  await page.locator('h1').waitFor();
  return { context, page, requests, complaints };
}
