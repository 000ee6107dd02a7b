import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import canonicalize from 'canonicalize';
import * as v from 'valibot';
import { expect, it } from 'vitest';
import { entriesText, sealedEntries } from '../../../src/record/sealed-entries.ts';
import { checkDefinition } from '../../../src/schema/check-definition.ts';
import { type SealedSheet, sealedSheetSchema } from '../../../src/schema/sealed-sheet.ts';
import { readSealed } from '../../../src/sheet/model/sealed/read-sealed.ts';
import { sealedText } from '../../../src/sheet/model/sealed/sealed-text.ts';
import { builtIn } from '../../checklists/built-in.ts';
import { HUT_CHECKLIST, NEWEST_MS, stampAt } from '../hut-pack.ts';
import { sha256, WREN_SEAL } from './demo-records.ts';
import { HUT_SEAL, withValue } from './hut-seal.ts';

const PACK = HUT_SEAL.packId;
const CLOSING = {
  key: [PACK, 'closing', 'b'.repeat(64)] as [string, string, string],
  v: { revision: 1, closedAtMs: NEWEST_MS, appVersion: '0.1.0', byteCount: 9, entriesSha256: 'e'.repeat(64) },
  at: stampAt(NEWEST_MS + 5),
  by: 'd'.repeat(32),
};

it('is the RFC 8785 text of itself, as the canonicalize package writes it, and passes its own schema', () => {
  for (const seal of [HUT_SEAL, WREN_SEAL]) {
    const text = sealedText(seal);
    expect(text).toBe(canonicalize(JSON.parse(text)));
    expect(v.safeParse(sealedSheetSchema, JSON.parse(text)).issues).toBeUndefined();
  }
});

it('has in its file the SHA-256 that sha256sum prints, and node:crypto', () => {
  const folder = mkdtempSync(join(tmpdir(), 'underlid-seal-'));
  const path = join(folder, 'wren.json');
  const text = sealedText(WREN_SEAL);
  writeFileSync(path, text, 'utf8');
  const printed = execFileSync('sha256sum', [path], { encoding: 'utf8' }).slice(0, 64);
  rmSync(folder, { recursive: true });
  expect(printed).toBe(sha256(new TextEncoder().encode(text)));
});

it('is the same text whatever the order in which the entries come', () => {
  expect(sealedText({ ...HUT_SEAL, entries: HUT_SEAL.entries.toReversed() })).toBe(sealedText(HUT_SEAL));
});

it('holds a record of 85 items with live tests and two logged runs in under 400 kB', () => {
  const bytes = new TextEncoder().encode(sealedText(WREN_SEAL)).length;
  expect(WREN_SEAL.definition.items.length).toBe(85);
  expect(bytes).toBeGreaterThan(200_000);
  expect(bytes).toBeLessThan(400_000);
});

it('leaves out closings, reopenings, attachments, other packs and values that do not pass the schema', () => {
  const foreign = { ...CLOSING, key: ['f'.repeat(32), 'fact', 'metal-case'] as [string, string, string], v: { choice: 'yes' } }; // biome-ignore format: one line
  const wrong = { ...CLOSING, key: [PACK, 'nameplate', 'massKg'] as [string, string, string], v: 'heavy' };
  const around = [
    CLOSING,
    { ...CLOSING, key: [PACK, 'reopening', 'c'.repeat(32)] as [string, string, string], v: { after: 'b'.repeat(64), reason: 'a slip', openedAtMs: 1 } }, // biome-ignore format: one line
    { ...CLOSING, key: [PACK, 'attachment', 'c'.repeat(32)] as [string, string, string], v: { kind: 'correction', text: 'No.', to: 'b'.repeat(64), made: stampAt(1) } }, // biome-ignore format: one line
  ];
  const whole = HUT_SEAL.entries.filter(({ key }) => key[2] !== 'massKg');
  const text = sealedText({ ...HUT_SEAL, entries: [...whole, foreign, wrong, ...around] });
  expect(text).toBe(sealedText({ ...HUT_SEAL, entries: whole }));
});

it('says of a revision why it was made and what it takes the place of', () => {
  const revises = { reason: 'The lug was measured again.', after: 'b'.repeat(64) };
  expect(JSON.parse(sealedText({ ...HUT_SEAL, revision: 2, revises }))).toMatchObject({ revision: 2, ...revises });
});

it('seals the grading by the checklist it was carried over from, with that checklist', () => {
  const old = { ...HUT_CHECKLIST, version: '0.2.0' };
  const carried = withValue(HUT_SEAL, ['pack', 'carriedFrom'], { id: 'hut', version: '0.2.0', sha256: '9'.repeat(64) });
  const sealed = JSON.parse(sealedText({ ...carried, earlier: old }));
  expect(sealed.earlier).toMatchObject({ checklist: { version: '0.2.0' }, definition: { id: 'hut' } });
  expect(sealed.figures['earlier/build/low']).toBeCloseTo(36.25, 9);
});

it.each([
  [
    'another definition',
    { definition: { ...HUT_CHECKLIST, version: '0.4.0' } },
    'the checklist hut 0.4.0, got hut 0.3.0',
  ],
  ['no checklist', { entries: HUT_SEAL.entries.filter(({ key }) => key[2] !== 'checklist') }, 'got none'],
  ['an earlier one that no entry names', { earlier: HUT_CHECKLIST }, 'got none'],
])('refuses %s', (_, given, reason) => {
  expect(() => sealedText({ ...HUT_SEAL, ...given })).toThrow(reason);
});

it('takes a pack that was put away and brought back for unchanged, and one with another answer for changed', () => {
  const before = entriesText(HUT_SEAL.entries);
  const back = { ...CLOSING, key: [PACK, 'pack', 'made'] as [string, string, string], v: { demo: true } };
  expect(entriesText([...sealedEntries(HUT_SEAL.entries).filter(({ key }) => key[2] !== 'made'), back, CLOSING])).toBe(
    before,
  );
  const changed = withValue(HUT_SEAL, ['answer', 'tidy'], { kind: 'grade', grade: 'weak', evidence: 'seen' });
  expect(entriesText(changed.entries)).not.toBe(before);
});

/** The built-in checklist with every id of an item, hazard or remedy filled up to so many letters, and a name of its own. */
function withLongIds(letters: number): unknown {
  const { items, hazards, remedies } = builtIn;
  const ids = new Set([...items, ...hazards, ...remedies].map(({ id }) => id));
  const filled = JSON.stringify({ ...builtIn, id: 'own-list' }, (name, value) =>
    typeof value === 'string' && ids.has(value) && ['id', 'item', 'hazard', ''].includes(/^\d+$/.test(name) ? '' : name)
      ? `${value}-`.padEnd(letters, 'x')
      : value,
  );
  return JSON.parse(filled);
}

it('of a checklist whose ids have the most letters, 60, can be read again; one of 61 is refused as a checklist', () => {
  const checked = checkDefinition(withLongIds(60));
  if (!checked.ok) throw new Error(JSON.stringify(checked.problems[0]));
  const own = { id: 'own-list', version: builtIn.version, sha256: 'c'.repeat(64) };
  const text = sealedText({ ...withValue(HUT_SEAL, ['pack', 'checklist'], own), definition: checked.definition });
  expect(readSealed(text, (entry) => ({ ok: true, entry }))).toMatchObject({ outcome: 'read' });
  // Names in a file may have 200 letters (schema/plain-json.ts), and the longest path holds two ids.
  const longest = Math.max(...Object.keys((JSON.parse(text) as SealedSheet).figures).map(({ length }) => length));
  expect(longest).toBeGreaterThan(120);
  expect(longest).toBeLessThanOrEqual(200);
  expect(checkDefinition(withLongIds(61)).ok).toBe(false);
});
