import type { Intake, IntakeOptions, IntakeStep } from './intake.ts';

/** Page to worker. */
export interface PhotoJob {
  jobId: number;
  file: Blob;
  options: IntakeOptions;
}

/** Worker to page: steps as they come, then one end. */
export type PhotoJobMessage =
  | { jobId: number; kind: 'step'; step: IntakeStep }
  | { jobId: number; kind: 'end'; intake: Intake; otherPathMayHelp: boolean };
