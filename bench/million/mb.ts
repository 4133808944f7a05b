/** Bytes as megabytes, to be printed. */
export function mb(bytes: number): string {
  return `${(bytes / 1e6).toFixed(bytes < 1e6 ? 2 : 0)} MB`;
}
