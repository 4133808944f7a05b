/**
 * A number with a true minus (U+2212) below nought and, where `plus` is asked for, a plus above it; what is written as nought has no sign.
 * Without `decimals` it stands as it is, as on an axis.
 */
export function signedText(value: number, { decimals, plus = false }: SignedAs = {}): string {
  const size = Math.abs(value);
  const digits = decimals === undefined ? String(size) : size.toFixed(decimals);
  if (Number(digits) === 0) return digits;
  return `${value < 0 ? '−' : plus ? '+' : ''}${digits}`;
}

interface SignedAs {
  decimals?: number;
  plus?: boolean;
}
