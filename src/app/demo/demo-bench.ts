import type { NewPhotoBytes, WriteProblem } from '../../storage/store.ts';
import { cardFromEntries } from '../card-of.ts';
import { nowMs, utcOffsetMinutes } from '../clock.ts';
import { refreshBench } from '../state/bench.ts';
import { builtInDefinition, type LoadedDefinition } from '../state/definitions.ts';
import { forgetOpenPack } from '../state/open-pack.ts';
import { provisionalEntries } from '../state/provisional.ts';
import { store } from '../state/store.ts';
import type { DemoPack } from './demo-pack.ts';
import { DIPPER } from './dipper.ts';
import { entriesOf } from './entries-of.ts';
import { type Painted, paintPicture } from './paint-picture.ts';
import { WREN } from './wren.ts';

/** In the order in which they are written: the Bench shows the last one first. */
const PACKS: readonly DemoPack[] = [DIPPER, WREN];
