/** How much one is beside another, before that other: "2.1 times", "only 45 % of". */
export function timesText(ratio: number): string {
  return ratio >= 1 ? `${ratio.toFixed(1)} times` : `only ${Math.round(100 * ratio)} % of`;
}
