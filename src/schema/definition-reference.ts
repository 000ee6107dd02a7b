/** Which definition a record is graded by: the hash is of the definition file's bytes. */
export interface DefinitionReference {
  id: string;
  version: string;
  sha256: string;
}
