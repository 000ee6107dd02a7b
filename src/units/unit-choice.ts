/** Units a person reads. Records always hold metric; conversion is for display and typing only. */
export const UNIT_CHOICES = ['metric', 'imperial'] as const;
export type UnitChoice = (typeof UNIT_CHOICES)[number];
