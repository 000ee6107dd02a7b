import { signal } from '@preact/signals';
import { goTo } from './route.ts';

/** Bundles that the platform opened with Underlid, or that were shared in, until they are restored or let go. */
export const openedFiles = signal<File[]>([]);

/** How many of the files opened last could not be read. */
export const unreadCount = signal(0);

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
  const read = await Promise.allSettled(handles.map((handle) => handle.getFile()));
  openedFiles.value = read.flatMap((one) => (one.status === 'fulfilled' ? [one.value] : []));
  unreadCount.value = read.length - openedFiles.value.length;
  goTo('#/keep/restore');
}
