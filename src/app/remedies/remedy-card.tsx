import type { Range } from '../../grading/grading.ts';
import type { RemedyBlock } from '../../sheet/model/sheet.ts';
import { remedyWords as say } from '../../text/remedies.ts';
import { RuleView } from '../../ui/rule-view.tsx';
import { QuotePart } from '../../ui/sheet/plain-blocks.tsx';

interface RemedyCardProps {
  block: RemedyBlock;
  /** The score once this and all before it are done. */
  after: Range;
  settled: boolean;
  /** Titles of the items it bears on. */
  items: string;
  onChange: () => void;
}

/** One remedy in its place: what it is, what it takes, what it clears, and the score after it. */
export function RemedyCard({ block, after, settled, items, onChange }: RemedyCardProps) {
  return (
    <li class="card stack remedy">
      <p>
        <strong class="number">{block.number}</strong> {block.text}
      </p>
      <p class="small">
        <span class="tag">{block.reachWord}</span> {[block.clears, block.open].filter(Boolean).join(' · ')}
      </p>
      {block.takes.map((line) => (
        <p key={line} class="small muted">
          {line}
        </p>
      ))}
      {block.note && <QuotePart label={block.note.label} text={block.note.text} />}
      <p class="small muted">{say.settles(items)}</p>
      <p class="small">{[block.gain, block.after].filter(Boolean).join(' · ')}</p>
      <RuleView score={after} settled={settled} />
      <button type="button" class="button" aria-label={say.changeOf(block.number)} onClick={onChange}>
        {say.change}
      </button>
    </li>
  );
}
