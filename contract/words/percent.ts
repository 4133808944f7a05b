/** A share in whole per cent. */
export function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}
