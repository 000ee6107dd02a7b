import type { ZipSink } from '../../storage/bundle/zip-writer.ts';

/** The File System Access API's save picker, where the browser has it: typed by hand, as it is in no standard yet. */
type SavePicker = (options: {
  suggestedName: string;
  types: { description: string; accept: Record<string, string[]> }[];
}) => Promise<FileSystemFileHandle>;

/** A file the person has chosen, written piece by piece; nothing of it is there before `close`. */
export interface FileToWrite extends ZipSink {
  name: string;
  close(): Promise<void>;
  /** Leaves the place as it was. */
  discard(): Promise<void>;
}

export function canPickFile(): boolean {
  return savePicker() !== null;
}

/**
 * Asks where to save; must be called within a tap. `noPicker` where the browser has none or will not show it here.
 *
 * Throws  whatever opening the chosen file throws
 */
export async function pickFileToWrite(suggestedName: string): Promise<FileToWrite | 'dismissed' | 'noPicker'> {
  const pick = savePicker();
  if (pick === null) return 'noPicker';
  let handle: FileSystemFileHandle;
  try {
    handle = await pick({ suggestedName, types: [{ description: 'Zip', accept: { 'application/zip': ['.zip'] } }] });
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    return error.name === 'AbortError' ? 'dismissed' : 'noPicker';
  }
  const writable = await handle.createWritable();
  return {
    name: handle.name,
    write: (piece) => writable.write(piece),
    close: () => writable.close(),
    discard: async () => {
      await writable.abort();
      await removeIfEmpty(handle);
    },
  };
}

/** The picker makes an empty file of a new name; one that was there before keeps its bytes, and is left. */
async function removeIfEmpty(handle: FileSystemFileHandle): Promise<void> {
  const { size } = await handle.getFile();
  if (size === 0 && 'remove' in handle && typeof handle.remove === 'function') await handle.remove();
}

function savePicker(): SavePicker | null {
  const found: unknown = Reflect.get(globalThis, 'showSaveFilePicker');
  return typeof found === 'function' ? (options) => Reflect.apply(found, globalThis, [options]) : null;
}
