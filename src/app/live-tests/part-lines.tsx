import type { PackRecord } from '../../record/pack-record.ts';
import { hrefTo } from '../route.ts';
import type { LiveTestPart } from './live-test-part.ts';
import { contextOf } from './test-context.ts';

/** One line per kind of test: how many, and the newest of them. */
export function PartLines({ record, parts }: { record: PackRecord; parts: readonly LiveTestPart[] }) {
  const context = contextOf(record);
  return (
    <ul class="lines">
      {parts.map((part) => {
        const count = part.count(record.tests);
        return (
          <li key={part.id}>
            <a class="line" href={hrefTo(record.packId, 'live-test', part.id)}>
              <span class="fact-mark">{count > 0 ? count : ''}</span>
              <span>
                <span class="title">{part.title}</span>
                {count > 0 && <span class="small muted newest">{part.newest(context)}</span>}
              </span>
              <span class="side">›</span>
            </a>
          </li>
        );
      })}
    </ul>
  );
}
