/** Orders versions of one checklist, oldest first. Written major.minor.patch, as the schema has it. */
export function byVersion(one: string, other: string): number {
  const a = parts(one);
  const b = parts(other);
  return a.major - b.major || a.minor - b.minor || a.patch - b.patch;
}

export function majorOf(version: string): number {
  return parts(version).major;
}

function parts(version: string): { major: number; minor: number; patch: number } {
  const [major = Number.NaN, minor = Number.NaN, patch = Number.NaN] = version.split('.').map(Number);
  if (![major, minor, patch].every(Number.isInteger)) {
    throw new RangeError(`byVersion: a version must be major.minor.patch, got ${version}`);
  }
  return { major, minor, patch };
}
