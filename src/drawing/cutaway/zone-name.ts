import type { CutawayZone } from '../cutaway.ts';
import type { Mark } from '../display-list.ts';
import { shortened } from '../text-shortened.ts';
import { type TextFace, textWidth } from '../text-width.ts';
import { zoneInk } from './zone-look.ts';

export interface TouchArea {
  zoneId: string;
  x: number;
  y: number;
  width: number;
  height: number;
}

const TITLE = { size: 16, weight: 600 } as const;
/** Of a title that is too long for its area; one that still is, is cut. */
const LONG_TITLE = { size: 14, weight: 600 } as const;
const PROGRESS = { size: 13, weight: 400 } as const;

/** Title and progress in the middle of an area, with a check once the zone is finished. */
export function nameMarks(zone: CutawayZone, area: TouchArea): Mark[] {
  const x = area.x + area.width / 2;
  const face = titleFace(zone, area);
  const title = shortened(zone.title, face, area.width - 14);
  const progress = shortened(zone.progressText, PROGRESS, area.width - 30);
  const check = zone.state === 'done' ? 7 : 0;
  const marks: Mark[] = [
    { kind: 'text', x, y: area.y + 21, text: title, ...face, anchor: 'middle', ink: zoneInk(zone.state) },
    {
      kind: 'text',
      x: x + check,
      y: area.y + 40,
      text: progress,
      ...PROGRESS,
      anchor: 'middle',
      ink: zone.state === 'next' ? 'ink' : 'muted',
    },
  ];
  if (zone.state === 'done') {
    const left = x + check - textWidth(progress, PROGRESS) / 2 - 14;
    marks.push({
      kind: 'line',
      points: [
        [left, area.y + 36],
        [left + 3.4, area.y + 39.4],
        [left + 9.4, area.y + 31.6],
      ],
      stroke: { ink: 'muted', width: 1.6, cap: 'round', join: 'round' },
    });
  }
  return marks;
}

/** A frame about the name of the zone to do next; none about any other. */
export function frameMarks(zone: CutawayZone, area: TouchArea): Mark[] {
  if (zone.state !== 'next') return [];
  const x = area.x + area.width / 2;
  const face = titleFace(zone, area);
  const title = shortened(zone.title, face, area.width - 14);
  const progress = shortened(zone.progressText, PROGRESS, area.width - 30);
  const half = Math.min(area.width / 2 - 2, Math.max(textWidth(title, face), textWidth(progress, PROGRESS)) / 2 + 11);
  return [
    {
      kind: 'shape',
      shape: { form: 'box', x: x - half, y: area.y + 2, width: 2 * half, height: area.height - 4, radius: 4 },
      stroke: { ink: 'ink', width: 2 },
      fill: 'face',
    },
  ];
}

function titleFace({ title }: CutawayZone, area: TouchArea): TextFace {
  return textWidth(title, TITLE) <= area.width - 14 ? TITLE : LONG_TITLE;
}
