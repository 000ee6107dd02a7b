/** Verdicts, worst first (DESIGN §5). `unsettled` is not among them: it is said when the two ends differ. */
export const VERDICTS = ['stop', 'keepOut', 'workshopFirst', 'notAsItComes', 'mindTheList', 'noFinding'] as const;
export type VerdictName = (typeof VERDICTS)[number];
