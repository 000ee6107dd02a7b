/** Units of a plot: as wide as the column of a phone, which paper and larger screens scale up. Our choice. */
export const PLOT_WIDTH = 350;
export const PLOT_HEIGHT = { one: 240, two: 330, trips: 330 } as const;
