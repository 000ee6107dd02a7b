import { BUNDLE_ENTRIES } from './bundle-entries.ts';
import { BUNDLE_STRUCTURES } from './bundle-structures.ts';
import { DEFINITION_FILES } from './definition-files.ts';
import type { HostileFile } from './hostile-file.ts';
import { LOG_FILES } from './log-files.ts';
import { PICTURE_FILES } from './picture-files.ts';

/** Every hostile file made by hand, with what must become of it. */
export const CATALOGUE: readonly HostileFile[] = [
  ...BUNDLE_STRUCTURES,
  ...BUNDLE_ENTRIES,
  ...DEFINITION_FILES,
  ...LOG_FILES,
  ...PICTURE_FILES,
];
