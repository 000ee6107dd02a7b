import { MAX_VOICE_BYTES, MAX_VOICE_S, VOICE_TYPES, type VoiceType } from '../../schema/voice-note.ts';

export type VoiceProblem = 'noMicrophone' | 'denied' | 'cannot' | 'empty' | 'failed' | 'tooLarge';

export interface Recorded {
  bytes: ArrayBuffer;
  type: VoiceType;
  durationS: number;
  /** It was ended because it had come to the most that one note holds. */
  atMost: boolean;
}

export interface Recording {
  /** When it began, by the clock that only runs forward. */
  beganAtMs: number;
  /** Resolves when it was stopped, by `stop`, at its longest, or by the phone. */
  done: Promise<{ ok: true; recorded: Recorded } | { ok: false; problem: VoiceProblem | 'dropped' }>;
  stop(): void;
  drop(): void;
}

/** Our choice: speech is understood at this rate, and five minutes are then about 1.2 MB. */
const BITS_PER_S = 32_000;

/** Begins to record from the phone's microphone; or says why it cannot. The sound stays in this page. */
export async function record(): Promise<Recording | VoiceProblem> {
  if (typeof MediaRecorder === 'undefined' || navigator.mediaDevices?.getUserMedia === undefined) return 'cannot';
  const type = VOICE_TYPES.find((one) => MediaRecorder.isTypeSupported(one));
  if (type === undefined) return 'cannot';
  let stream: MediaStream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({ audio: true });
  } catch (error) {
    console.warn('voice: no microphone', error);
    return error instanceof DOMException && error.name === 'NotFoundError' ? 'noMicrophone' : 'denied';
  }
  try {
    return recordingOf(stream, type);
  } catch (error) {
    console.warn('voice: not recorded', error);
    for (const track of stream.getTracks()) track.stop();
    return 'failed';
  }
}

function recordingOf(stream: MediaStream, type: VoiceType): Recording {
  const recorder = new MediaRecorder(stream, { mimeType: type, audioBitsPerSecond: BITS_PER_S });
  const beganAtMs = performance.now();
  const pieces: Blob[] = [];
  let dropped = false;
  let atMost = false;
  const stop = () => {
    if (recorder.state !== 'inactive') recorder.stop();
  };
  const longest = setTimeout(() => {
    atMost = true;
    stop();
  }, MAX_VOICE_S * 1000);
  // A page that is hidden may be ended without another word: what was said so far is kept first.
  const hidden = () => {
    if (document.visibilityState === 'hidden') stop();
  };
  document.addEventListener('visibilitychange', hidden);
  const done = new Promise<Awaited<Recording['done']>>((resolve) => {
    recorder.ondataavailable = ({ data }) => pieces.push(data);
    recorder.onerror = (event) => console.warn('voice: recorder failed', event);
    recorder.onstop = () => {
      clearTimeout(longest);
      document.removeEventListener('visibilitychange', hidden);
      for (const track of stream.getTracks()) track.stop();
      const durationS = Math.min((performance.now() - beganAtMs) / 1000, MAX_VOICE_S);
      if (dropped) resolve({ ok: false, problem: 'dropped' });
      else void recordedOf(pieces, { type, durationS, atMost }).then(resolve);
    };
  });
  recorder.start();
  return {
    beganAtMs,
    done,
    stop,
    drop() {
      dropped = true;
      stop();
    },
  };
}

async function recordedOf(
  pieces: readonly Blob[],
  facts: Omit<Recorded, 'bytes'>,
): Promise<Awaited<Recording['done']>> {
  try {
    const bytes = await new Blob([...pieces]).arrayBuffer();
    if (bytes.byteLength === 0) return { ok: false, problem: 'empty' };
    if (bytes.byteLength > MAX_VOICE_BYTES) return { ok: false, problem: 'tooLarge' };
    return { ok: true, recorded: { bytes, ...facts } };
  } catch (error) {
    console.warn('voice: pieces not put together', error);
    return { ok: false, problem: 'failed' };
  }
}
