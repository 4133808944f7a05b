/** Several names in a narrow place: "Ida", "Ida and 7 more"; empty where there is none. */
export function firstAndMore([first, ...more]: readonly string[]): string {
  if (first === undefined) return '';
  return more.length === 0 ? first : `${first} and ${more.length} more`;
}
