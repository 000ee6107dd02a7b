import type { Store } from '../../storage/store.ts';

let opened: Store | null = null;

/** The open database. Boot sets it before any screen is shown. */
export function store(): Store {
  if (!opened) throw new Error('store: asked for before the database was opened');
  return opened;
}

export function setStore(value: Store): void {
  opened = value;
}
