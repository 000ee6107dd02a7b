import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { definitionFiles } from './definition-files.ts';
import { releaseFaults } from './release-faults.ts';

const DRAFT = { name: 'made-up/1.0.0', text: '{"id":"made-up","version":"1.0.0","status":"draft"}' };
const RELEASED = { name: 'made-up/1.0.0', text: '{"id":"made-up","version":"1.0.0","status":"released"}' };
const SHA256 = createHash('sha256').update(RELEASED.text).digest('hex');

describe('the released checklists', () => {
  it('are, with the drafts, at least 1 file, and none was edited, left out or lost', () => {
    const released = JSON.parse(readFileSync('checklists/released.json', 'utf8'));
    const files = definitionFiles();
    expect(files.length).toBeGreaterThanOrEqual(1);
    expect(releaseFaults(released, files)).toEqual([]);
  });

  it('have 0 faults when a draft is unlisted and a released file listed with its hash', () => {
    expect(releaseFaults({}, [DRAFT])).toEqual([]);
    expect(releaseFaults({ 'made-up/1.0.0': SHA256 }, [RELEASED])).toEqual([]);
  });

  it('are refused when one was edited by a space', () => {
    const edited = { ...RELEASED, text: `${RELEASED.text} ` };
    expect(releaseFaults({ 'made-up/1.0.0': SHA256 }, [edited])).toEqual([
      'made-up/1.0.0 was edited after its release: make a new version instead',
    ]);
  });

  it('are refused when one is not listed, naming the line to add', () => {
    expect(releaseFaults({}, [RELEASED])).toEqual([
      `made-up/1.0.0 is released and not listed: add "made-up/1.0.0": "${SHA256}"`,
    ]);
  });

  it('are refused when a listed one has no file', () => {
    expect(releaseFaults({ 'made-up/1.0.0': SHA256 }, [])).toEqual([
      'made-up/1.0.0 is listed as released and has no file',
    ]);
  });

  it('are refused when a listed one calls itself a draft again', () => {
    const draftSha256 = createHash('sha256').update(DRAFT.text).digest('hex');
    expect(releaseFaults({ 'made-up/1.0.0': draftSha256 }, [DRAFT])).toEqual([
      'made-up/1.0.0 is listed as released and calls itself draft',
    ]);
  });

  it('are refused when a file lies under another name than its own', () => {
    expect(releaseFaults({}, [{ ...DRAFT, name: 'made-up/1.1.0' }])).toEqual([
      'made-up/1.1.0 calls itself made-up/1.0.0',
    ]);
  });
});
