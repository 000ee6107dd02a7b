import './voice.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import { sha256Hex } from '../../photos/sha256-hex.ts';
import type { VoiceNote } from '../../schema/voice-note.ts';
import { formatElapsed, formatRunning } from '../../text/format-elapsed.ts';
import { voiceWords as say } from '../../text/voice.ts';
import type { PackSession } from '../state/pack-session.ts';
import { type Recorded, type Recording, record, type VoiceProblem } from './recorder.ts';
import { useVoiceUrl } from './use-voice-url.ts';

interface VoicePartProps {
  session: PackSession;
  /** The item or photo that is spoken of. */
  on: VoiceNote['on'];
}

/** What was said about an item or a photo, and the way to say more. */
export function VoicePart({ session, on }: VoicePartProps) {
  const [recording, setRecording] = useState<Recording | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const running = useRef<Recording | null>(null);
  /** Asked for, and not begun or refused yet. */
  const starting = useRef(false);
  const left = useRef(false);
  // Left while it runs, it is kept as far as it goes: a word lost is worse than one too many.
  useEffect(
    () => () => {
      left.current = true;
      running.current?.stop();
    },
    [],
  );
  const notes = session.record.value.voices.filter((voice) => voice.on.kind === on.kind && voice.on.id === on.id);

  async function begin() {
    if (starting.current || running.current !== null) return;
    setSaid(null);
    starting.current = true;
    const begun = await record();
    starting.current = false;
    if (typeof begun === 'string') return setSaid(say.problems[begun]);
    // Nobody may be listened to on a screen that does not say so.
    if (left.current) return begun.drop();
    running.current = begun;
    setRecording(begun);
    const done = await begun.done;
    running.current = null;
    setRecording(null);
    if (done.ok) await keep(done.recorded);
    else if (done.problem !== 'dropped') setSaid(say.problems[done.problem satisfies VoiceProblem]);
  }
  async function keep({ bytes, type, durationS, atMost }: Recorded) {
    const sha256 = await sha256Hex(bytes);
    const v = { on, type, byteCount: bytes.byteLength, durationS, made: null };
    if (atMost) setSaid(say.mostReached);
    await session.put({
      puts: [{ subject: 'voice', part: sha256, v }],
      photos: [{ sha256, shelf: 'voices', content: { type, bytes } }],
      undoLabel: say.added,
    });
  }

  return (
    <section class="voice stack" aria-label={say.title}>
      {notes.map((note) => (
        <Spoken key={note.id} session={session} note={note} />
      ))}
      {said && (
        <p class="notice calm" role="status">
          {said}
        </p>
      )}
      {recording ? (
        <div class="stack">
          <p role="status">
            {say.recording} <Running beganAtMs={recording.beganAtMs} />
          </p>
          <div class="row">
            <button type="button" class="button" onClick={() => recording.drop()}>
              {say.drop}
            </button>
            <button type="button" class="button primary" onClick={() => recording.stop()}>
              {say.stop}
            </button>
          </div>
          <p class="small muted">{say.kept}</p>
        </div>
      ) : (
        <button type="button" class="button quiet" onClick={() => void begin()}>
          {say.record}
        </button>
      )}
    </section>
  );
}

function Running({ beganAtMs }: { beganAtMs: number }) {
  const [now, setNow] = useState(performance.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(performance.now()), 250);
    return () => clearInterval(timer);
  }, []);
  return <span class="figures">{formatRunning(Math.max(0, now - beganAtMs))}</span>;
}

function Spoken({ session, note }: { session: PackSession; note: VoiceNote & { id: string } }) {
  const sound = useVoiceUrl(note.id);
  const name = say.length(formatElapsed(note.durationS * 1000));
  function takeOut() {
    void session.put({ puts: [{ subject: 'voice', part: note.id, gone: true }], undoLabel: say.takenOut });
  }
  return (
    <div class="card stack">
      <div class="voice-head">
        <p>{name}</p>
        <button type="button" class="button quiet" aria-label={say.takeOutLabel(name)} onClick={takeOut}>
          {say.takeOut}
        </button>
      </div>
      {sound === 'absent' && <p class="small muted">{say.notHere}</p>}
      <audio controls preload="metadata" aria-label={name} {...(sound.startsWith('blob:') && { src: sound })} />
    </div>
  );
}
