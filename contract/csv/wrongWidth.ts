/** Why a line does not fit its header; null: it does. A comma too many is mostly a decimal one. */
export function wrongWidth(cells: readonly string[], width: number): string | null {
  if (cells.length === width) return null;
  const message = `This line has ${cells.length} cells; the header has ${width}`;
  if (cells.length < width) return `${message}.`;
  return `${message}. A cell that contains the separator itself, such as "20,5", needs quotes.`;
}
