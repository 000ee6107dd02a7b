import type { BundleRefusal } from '../../schema/bundle.ts';

/** Thrown inside the readers; `readBundle` hands it back as a value. The detail names the file and what is wrong in it. */
export class RefusedBundle extends Error {
  constructor(
    readonly refusal: BundleRefusal,
    detail: string,
  ) {
    super(detail);
  }
}
