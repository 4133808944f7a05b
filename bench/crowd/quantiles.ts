/** The value below which a share of all lies. */
export function quantile(values: readonly number[], share: number): number {
  const inOrder = values.toSorted((a, b) => a - b);
  return inOrder[Math.min(inOrder.length - 1, Math.floor(share * inOrder.length))] ?? Number.NaN;
}
