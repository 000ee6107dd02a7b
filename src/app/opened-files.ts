import { signal } from '@preact/signals';
import { goTo } from './route.ts';

/** Bundles that the platform opened with Underlid, or that were shared in, until they are restored or let go. */
export const openedFiles = signal<File[]>([]);

/** The part of the launch queue that is used; browsers of phones mostly have none. */
interface LaunchQueue {
  setConsumer(consume: (launch: { files?: readonly FileSystemFileHandle[] }) => void): void;
}

/** Leads a bundle that was opened from outside to Keep, where it is checked before anything is taken in. */
export function watchOpenedFiles(): void {
  const { launchQueue } = globalThis as { launchQueue?: LaunchQueue };
  launchQueue?.setConsumer(({ files = [] }) => {
    if (files.length > 0) void openFiles(files);
  });
}

async function openFiles(handles: readonly FileSystemFileHandle[]): Promise<void> {
  try {
    openedFiles.value = await Promise.all(handles.map((handle) => handle.getFile()));
    goTo('#/keep/restore');
  } catch (error) {
    console.error('opened file: not read', error);
  }
}
