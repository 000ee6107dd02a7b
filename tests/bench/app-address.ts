/** Takes vitest's place for the browser tests' driver, which asks it for one thing only: the address of the app. */
let address: string | null = null;

export function setAppAddress(url: string): void {
  address = url;
}

export function inject(): string {
  if (address === null) throw new Error('inject: the app is not served yet');
  return address;
}
