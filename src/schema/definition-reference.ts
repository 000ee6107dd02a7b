import * as v from 'valibot';
import { idSchema, sha256Schema } from './text-limits.ts';

/** Which definition a record is graded by: the hash is of the definition file's bytes. */
export const definitionReferenceSchema = v.looseObject({ id: idSchema, version: v.string(), sha256: sha256Schema });
export interface DefinitionReference {
  id: string;
  version: string;
  sha256: string;
}
