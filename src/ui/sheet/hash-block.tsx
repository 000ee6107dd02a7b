import type { HashBlock } from '../../sheet/model/sheet.ts';

/** A SHA-256 to be read aloud: its groups stand one under the other, and none is ever broken. */
export function HashPart({ label, groups }: Pick<HashBlock, 'label' | 'groups'>) {
  return (
    <div>
      <p class="small muted">{label}</p>
      <p class="sheet-hash">
        {groups.map((group, place) => (
          <span key={place}>{group} </span>
        ))}
      </p>
    </div>
  );
}
