/** Whether one major.minor.patch version is above another. */
export function isNewerVersion(version: string, than: string): boolean {
  const [a, b] = [version, than].map((text) => text.split('.').map(Number));
  for (const at of [0, 1, 2]) {
    const difference = (a?.[at] ?? 0) - (b?.[at] ?? 0);
    if (difference !== 0) return difference > 0;
  }
  return false;
}
