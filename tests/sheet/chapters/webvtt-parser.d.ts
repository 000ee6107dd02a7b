/** The part of the parser that the tests use; the package has no types of its own. */
declare module 'webvtt-parser' {
  interface ParsedCue {
    id: string;
    startTime: number;
    endTime: number;
    text: string;
    tree: { children: { type: string; value: string }[] };
  }
  const webvtt: {
    WebVTTParser: new (
      entities?: Readonly<Record<string, string>>,
    ) => {
      parse(
        text: string,
        mode: 'chapters' | 'metadata',
      ): { cues: ParsedCue[]; errors: { message: string; line: number; col?: number }[] };
    };
  };
  export default webvtt;
}
