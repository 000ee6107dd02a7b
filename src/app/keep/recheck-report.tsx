import type { PrintedHash } from '../../sheet/model/sealed/printed-hash.ts';
import type { RecheckLine } from '../../sheet/model/sealed/recheck.ts';
import { formatMoment } from '../../text/format-day.ts';
import { recheckWords as say } from '../../text/recheck.ts';
import { words } from '../../text/words.ts';
import { APP_VERSION } from '../app-version.ts';
import { utcOffsetMinutes } from '../clock.ts';
import type { RecheckedFile } from './recheck-file.ts';

/** So many lines are shown. Our choice: who changed more than these changed the sheet. */
const SHOWN_LINES = 50;

/** What a recheck came to, the gravest first. */
export function RecheckReport({ file, printed }: { file: RecheckedFile; printed: PrintedHash }) {
  const { info, same } = file;
  const apart = [...file.differences, ...file.missing, ...file.extra];
  const hashes = hashWords(file, printed);
  const isSame = apart.length === 0;
  const isOtherVersion = info.appVersion !== APP_VERSION;
  return (
    <div class={isSame && !hashes.isAnother ? 'notice calm stack' : 'notice stack'} role="status" data-recheck>
      {hashes.isAnother && (
        <p>
          <strong>{hashes.said}</strong>
        </p>
      )}
      <p>
        <strong>{isSame ? say.same(same) : say.differ(apart.length, same + apart.length)}</strong>
      </p>
      {!isSame && <Lines lines={apart} />}
      {!isSame && isOtherVersion && <p>{say.otherVersion}</p>}
      {!file.canonical && <p>{say.laidOutAnew}</p>}
      <Hash label={say.ofFile} sha256={file.fileSha256} />
      {!file.canonical && <Hash label={say.ofContent} sha256={file.contentSha256} />}
      {!hashes.isAnother && <p>{hashes.said}</p>}
      <p>
        {say.sheet(words.packLabel(info.packName, info.sample), info.revision, momentOf(info.closedAtMs))}{' '}
        {info.demo && <span class="tag">{words.inventedDemo}</span>}
      </p>
      {info.reason !== null && <p>{say.revised(info.reason)}</p>}
      <p>
        {say.checklist(info.checklist.title, info.checklist.id, info.checklist.version)} {say.known[file.known]}
      </p>
      <p>{say.madeBy(info.appVersion, APP_VERSION)}</p>
      <p class="muted">{say.nothingStored}</p>
    </div>
  );
}

function Lines({ lines }: { lines: readonly RecheckLine[] }) {
  return (
    <ul class="stack" aria-label={say.lines}>
      {lines.slice(0, SHOWN_LINES).map(({ path, words: name, sealed, recomputed }) => (
        <li key={path}>
          {name}
          <br />
          <span class="small">
            {say.sealed} <b>{sealed ?? say.noLine}</b>, {say.recomputed} <b>{recomputed ?? say.noLine}</b>
          </span>
        </li>
      ))}
      {lines.length > SHOWN_LINES && <li>{say.more(lines.length - SHOWN_LINES)}</li>}
    </ul>
  );
}

function Hash({ label, sha256 }: { label: string; sha256: string }) {
  return (
    <p class="small">
      {label}
      <br />
      <span class="hash">{sha256.replace(/.{8}(?=.)/g, '$& ')}</span>
    </p>
  );
}

/** Whether the printed digits are those of the file, or at least of its content. */
function hashWords(file: RecheckedFile, printed: PrintedHash): { isAnother: boolean; said: string } {
  if (printed.is !== 'digits') return { isAnother: false, said: say.notCompared };
  const { digits } = printed;
  if (file.fileSha256.startsWith(digits)) return { isAnother: false, said: say.match(digits.length) };
  if (file.contentSha256.startsWith(digits)) return { isAnother: false, said: say.contentMatch(digits.length) };
  return { isAnother: true, said: say.noMatch(digits.length) };
}

/** The last moment that has a day of four-digit year on every clock. */
const LATEST_MS = Date.UTC(9999, 11, 30);

function momentOf(closedAtMs: number): string {
  const atMs = Math.min(closedAtMs, LATEST_MS);
  return formatMoment(atMs, utcOffsetMinutes(atMs));
}
