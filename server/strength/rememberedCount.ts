/** Estimates to go on from, some megabyte each: a club of forty in three lifts. */
export const rememberedCount = 130;
