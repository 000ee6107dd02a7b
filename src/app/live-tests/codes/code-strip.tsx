import { cellCode } from '../../../calc/cell-code.ts';
import { cellCodeWords as say } from '../../../text/live-tests/cell-code.ts';
import { codeCharacters } from './code-glance.ts';

/** The characters in their fields, the one that cannot stand where it does marked and named with its place. */
export function CodeStrip({ text }: { text: string }) {
  const code = cellCode(text);
  const wrongAt = !code.ok && code.at !== undefined && code.found !== undefined ? code : null;
  return (
    <div class="stack">
      <p class="code-strip" role="img" aria-label={`${say.strip}: ${text}`}>
        {codeCharacters(text).map(({ character, wrong, opens }, index) => (
          <span key={index} class={[opens ? 'opens' : '', wrong ? 'wrong-here' : ''].join(' ')}>
            {character}
          </span>
        ))}
      </p>
      {wrongAt !== null && (
        <p class="notice calm small" role="status">
          {say.wrongAt(wrongAt.at ?? 0, wrongAt.found ?? '')}
        </p>
      )}
    </div>
  );
}
