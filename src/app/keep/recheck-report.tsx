import { type PrintedHash, SURE_DIGITS } from '../../sheet/model/sealed/printed-hash.ts';
import type { RecheckLine } from '../../sheet/model/sealed/recheck.ts';
import { formatMoment } from '../../text/format-day.ts';
import { recheckWords as say } from '../../text/recheck.ts';
import { words } from '../../text/words.ts';
import { APP_VERSION } from '../app-version.ts';
import { utcOffsetMinutes } from '../clock.ts';
import type { RecheckedFile } from './recheck-file.ts';

/** So many lines are shown. Our choice: who changed more than these changed the sheet. */
const SHOWN_LINES = 50;

/** What a recheck came to, the gravest first. Calm only where the file is surely the sheet's own and all of it holds. */
export function RecheckReport({ file, printed }: { file: RecheckedFile; printed: PrintedHash }) {
  const { info, same } = file;
  const { checklist, earlier } = info;
  const apart = [...file.differences, ...file.missing, ...file.extra];
  const hashes = hashWords(file, printed);
  const isSame = apart.length === 0;
  const isOtherVersion = info.appVersion !== APP_VERSION;
  const forged = [
    ...(file.known === 'otherContent' ? [checklist] : []),
    ...(earlier !== null && file.earlierKnown === 'otherContent' ? [earlier] : []),
  ];
  const isCalm = isSame && hashes.are === 'sure' && forged.length === 0;
  return (
    <div class={isCalm ? 'notice calm stack' : 'notice stack'} role="status" data-recheck>
      {hashes.are === 'another' && (
        <p>
          <strong>{hashes.said}</strong>
        </p>
      )}
      {forged.map(({ id, version }) => (
        <p key={`${id} ${version}`}>
          <strong>{say.notThatChecklist(id, version)}</strong>
        </p>
      ))}
      <p>
        <strong>{isSame ? say.same(same) : say.differ(apart.length, same + apart.length)}</strong>
        {isSame && hashes.are !== 'sure' && ` ${say.onlyItself}`}
      </p>
      {!isSame && <Lines lines={apart} />}
      {!isSame && isOtherVersion && <p>{say.otherVersion}</p>}
      {!file.canonical && <p>{say.laidOutAnew}</p>}
      {hashes.are !== 'another' && <p>{hashes.are === 'sure' ? hashes.said : <strong>{hashes.said}</strong>}</p>}
      <Hash label={say.ofFile} sha256={file.fileSha256} />
      {!file.canonical && <Hash label={say.ofContent} sha256={file.contentSha256} />}
      <p>
        {say.sheet(words.packLabel(info.packName, info.sample), info.revision, momentOf(info.closedAtMs))}{' '}
        {info.demo && <span class="tag">{words.inventedDemo}</span>}
      </p>
      {info.reason !== null && <p>{say.revised(info.reason)}</p>}
      <p>
        {say.checklist(checklist.title, checklist.id, checklist.version)} {say.known[file.known]}
      </p>
      {earlier !== null && file.earlierKnown !== null && (
        <p>
          {say.earlier(earlier.title, earlier.id, earlier.version)} {say.known[file.earlierKnown]}
        </p>
      )}
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

interface HashWords {
  /** `unsure`: none were typed, or so few that an altered file may have them too. */
  are: 'sure' | 'unsure' | 'another';
  said: string;
}

/** Whether the printed digits are those of the file, or at least of its content. */
function hashWords(file: RecheckedFile, printed: PrintedHash): HashWords {
  if (printed.is !== 'digits') return { are: 'unsure', said: say.notCompared };
  const { digits } = printed;
  const isOfFile = file.fileSha256.startsWith(digits);
  if (!isOfFile && !file.contentSha256.startsWith(digits)) return { are: 'another', said: say.noMatch(digits.length) };
  const said = isOfFile ? say.match(digits.length) : say.contentMatch(digits.length);
  if (digits.length >= SURE_DIGITS) return { are: 'sure', said };
  return { are: 'unsure', said: `${said} ${say.fewDigits(digits.length)}` };
}

/** The last moment that has a day of four-digit year on every clock. */
const LATEST_MS = Date.UTC(9999, 11, 30);

function momentOf(closedAtMs: number): string {
  const atMs = Math.min(closedAtMs, LATEST_MS);
  return formatMoment(atMs, utcOffsetMinutes(atMs));
}
