/** Further ahead nothing can be said of a lifter. */
export const mostDaysAhead = 366;
