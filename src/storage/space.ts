/** Space on this phone as the browser estimates it; null where it does not say. */
export async function spaceUsed(): Promise<{ usedBytes: number; quotaBytes: number } | null> {
  const manager = storageManager();
  if (typeof manager?.estimate !== 'function') return null;
  const { usage, quota } = await manager.estimate();
  return usage === undefined || quota === undefined ? null : { usedBytes: usage, quotaBytes: quota };
}

/** Asks the browser to keep the data when space runs short. `unknown`: it cannot be asked. */
export async function askToPersist(): Promise<'persisted' | 'refused' | 'unknown'> {
  const manager = storageManager();
  if (typeof manager?.persist !== 'function') return 'unknown';
  return (await manager.persist()) ? 'persisted' : 'refused';
}

/** False also where the browser cannot say: then nothing is promised. */
export async function isPersisted(): Promise<boolean> {
  const manager = storageManager();
  return typeof manager?.persisted === 'function' && (await manager.persisted());
}

/** Absent outside secure contexts and in some engines, whatever the types say. */
function storageManager(): StorageManager | undefined {
  return typeof navigator === 'undefined' ? undefined : navigator.storage;
}
