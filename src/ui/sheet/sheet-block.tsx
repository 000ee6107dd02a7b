import { rule } from '../../drawing/rule.ts';
import type {
  Block,
  FindingBlock,
  LedgerBlock,
  RemedyBlock,
  VerdictBlock,
  ZonesBlock,
} from '../../sheet/model/sheet.ts';
import { DrawingView } from '../drawing-view.tsx';
import { Lid } from '../lid.tsx';
import { GridPart } from './grid-block.tsx';
import { HashPart } from './hash-block.tsx';
import { AnswersPart, FiguresPart, ListPart, QuotePart, TablePart } from './plain-blocks.tsx';
import { PlotPart } from './plot-block.tsx';
import { ResultPart } from './result-block.tsx';
import type { SheetViewProps } from './sheet-view.tsx';

/** One block of the sheet's model on screen. */
export function SheetBlock({ block, photo }: { block: Block; photo: SheetViewProps['photo'] }) {
  switch (block.kind) {
    case 'verdict':
      return <VerdictPart block={block} />;
    case 'rule':
      return (
        <div class="rule">
          <DrawingView drawing={rule({ ...block, widthPx: 330 })} />
        </div>
      );
    case 'figures':
      return <FiguresPart block={block} />;
    case 'zones':
      return <ZonesPart block={block} />;
    case 'finding':
      return <FindingPart block={block} photo={photo} />;
    case 'remedy':
      return <RemedyPart block={block} />;
    case 'ledger':
      return <LedgerPart block={block} />;
    case 'answers':
      return <AnswersPart block={block} />;
    case 'photos':
      return <div class="sheet-photos">{block.photos.map((one) => photo(one))}</div>;
    case 'table':
      return <TablePart block={block} />;
    case 'list':
      return <ListPart block={block} />;
    case 'quote':
      return <QuotePart label={block.label} text={block.text} />;
    case 'paragraph':
      return (
        <p class={block.tone === 'caution' ? 'notice' : block.tone === 'muted' ? 'muted small' : ''}>{block.text}</p>
      );
    case 'hash':
      return <HashPart label={block.label} groups={block.groups} />;
    case 'subhead':
      return <h3>{block.text}</h3>;
    case 'result':
      return <ResultPart block={block} />;
    case 'plot':
      return <PlotPart block={block} />;
    case 'grid':
      return <GridPart block={block} />;
  }
}

function VerdictPart({ block }: { block: VerdictBlock }) {
  return (
    <div class={block.stop ? 'notice stack' : 'sheet-verdict'}>
      <h2>{block.title}</h2>
      <p class="small">{block.line}</p>
      {block.stop ? (
        <ol class="steps">
          {block.advice.map((step) => (
            <li key={step}>
              <span>{step}</span>
            </li>
          ))}
        </ol>
      ) : (
        block.advice.map((line) => (
          <p key={line} class="small">
            {line}
          </p>
        ))
      )}
    </div>
  );
}

function ZonesPart({ block }: { block: ZonesBlock }) {
  return (
    <ul class="sheet-zones">
      {block.rows.map((row) => (
        <li key={row.zoneId}>
          <Lid outcome={row.glyph} widthPx={20} />
          <span>
            {row.title}
            <span class="unseen"> ({row.glyphWord})</span>
          </span>
          <span class="sheet-bar" aria-hidden="true">
            {row.bar && (
              <>
                <span class="sure" style={{ width: `${row.bar.lowFrac * 100}%` }} />
                <span class="open" style={{ width: `${(row.bar.highFrac - row.bar.lowFrac) * 100}%` }} />
              </>
            )}
          </span>
          <span class="figure">{row.shown}</span>
          <span class="small muted detail">{row.detail}</span>
        </li>
      ))}
    </ul>
  );
}

function FindingPart({ block, photo }: { block: FindingBlock; photo: SheetViewProps['photo'] }) {
  return (
    <div class="sheet-finding">
      <span class="number">{block.number}</span>
      <div class="stack">
        <h3 class="with-lid">
          <Lid outcome={block.glyph} widthPx={20} />
          <span>
            {block.title}: {block.gradeWord}
          </span>
        </h3>
        <p>{block.sentence}</p>
        <p class="small muted">{block.line}</p>
        {block.harm && <p class="small">{block.harm}</p>}
        {block.likelihoodReason && <p class="small muted">{block.likelihoodReason}</p>}
        <p class="small muted">{block.evidence}</p>
        <p class="small muted">{block.basis}</p>
        {block.note && <QuotePart label={block.note.label} text={block.note.text} />}
        {block.photos.map((one) => photo(one))}
      </div>
    </div>
  );
}

function RemedyPart({ block }: { block: RemedyBlock }) {
  return (
    <div class="sheet-finding">
      <span class="number">{block.number}</span>
      <div>
        <p>{block.text}</p>
        <p class="small muted">
          {[block.reachWord, block.clears, block.gain, block.after, block.open].filter(Boolean).join(' · ')}
        </p>
        {block.takes.length > 0 && <p class="small muted">{block.takes.join(' · ')}</p>}
        {block.note && <QuotePart label={block.note.label} text={block.note.text} />}
      </div>
    </div>
  );
}

function LedgerPart({ block }: { block: LedgerBlock }) {
  return (
    <table class="sheet-ledger">
      <tbody>
        {block.rows.map((row, index) => (
          <tr key={index} class={row.kind}>
            <td>
              {row.text}
              {row.detail && <span class="small muted"> {row.detail}</span>}
            </td>
            <td class="figure">{row.points}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
