/** A share in per cent as the studies' tables have it: "74.3 %". */
export function percent(share: number, decimals: number): string {
  return `${(100 * share).toFixed(decimals)} %`;
}
