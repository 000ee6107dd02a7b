/** The file handed over last: its bytes are held for as long as its address is, and a bundle may have many parts. */
let lastUrl: string | null = null;

/** Hands a file to the person: the browser saves it where downloads go. The file before it is let go. */
export function saveFile(blob: Blob, fileName: string): void {
  if (lastUrl !== null) URL.revokeObjectURL(lastUrl);
  const url = URL.createObjectURL(blob);
  lastUrl = url;
  const link = document.createElement('a');
  link.href = url;
  link.download = fileName;
  document.body.append(link);
  link.click();
  link.remove();
  // The browser reads the bytes after this turn; half a minute is long for that and short for memory.
  setTimeout(() => URL.revokeObjectURL(url), 30_000);
}

/** Whether the phone can share this file to other apps. */
export function canShare(file: File): boolean {
  return typeof navigator.canShare === 'function' && navigator.canShare({ files: [file] });
}

/** Shares a file; a person who changes their mind is no failure. */
export async function shareFile(file: File): Promise<'shared' | 'cancelled' | 'failed'> {
  try {
    await navigator.share({ files: [file], title: file.name });
    return 'shared';
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return 'cancelled';
    console.warn('share: failed', error);
    return 'failed';
  }
}
