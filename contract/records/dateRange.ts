/** The days that the program knows. Whoever lifts today was born later than the first, and for what comes after the last nobody plans now. */
export const earliestDate = '1900-01-01';
export const latestDate = '2199-12-31';
