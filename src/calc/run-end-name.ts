/**
 * How a run ended.
 *
 * `lowVoltage`      the knee was seen, whoever opened the circuit
 * `packDisconnect`  the terminals dropped, or 0 V and 0 A, with no knee before
 * `stopped`         somebody or a timer ended it while the pack still delivered
 * `taper`           the current fell away at held voltage
 * `unclear`         the evidence does not say
 */
export const RUN_ENDS = ['lowVoltage', 'packDisconnect', 'stopped', 'taper', 'unclear'] as const;
export type RunEnd = (typeof RUN_ENDS)[number];
