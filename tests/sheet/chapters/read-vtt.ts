import webvtt from 'webvtt-parser';
import entities from 'webvtt-parser/html-entities.json' with { type: 'json' };

/** A WebVTT file of chapters as webvtt-parser 2.2.0 reads it, and what it finds fault with. */
export function readVtt(text: string) {
  const { cues, errors } = new webvtt.WebVTTParser(entities).parse(text, 'chapters');
  return {
    errors,
    chapters: cues.map(({ startTime, endTime, tree }) => ({
      startMs: Math.round(startTime * 1000),
      endMs: Math.round(endTime * 1000),
      title: tree.children.map(({ value }) => value).join(''),
    })),
  };
}
