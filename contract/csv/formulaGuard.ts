/**
 * Keeps a spreadsheet from running a cell of text as a formula: text that begins like one gets an apostrophe in front,
 * which spreadsheets take as "this is text". Text that already begins so gets one more, so that reading is exact.
 */
export function guardFormula(text: string): string {
  return /^'*[=+\-@\t\r\n]/.test(text) ? `'${text}` : text;
}

/** The text as it was before `guardFormula`. */
export function unguardFormula(cell: string): string {
  return /^'+[=+\-@\t\r\n]/.test(cell) ? cell.slice(1) : cell;
}
