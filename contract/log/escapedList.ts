/** Texts in one, a sign between them; where a text holds the sign itself a backslash stands before it. */
export function joinEscaped(parts: readonly string[], sign: ';' | '@'): string {
  return parts.map((part) => part.replaceAll(/[\\;@]/g, '\\$&')).join(` ${sign} `);
}

/** The texts that a sign separates, backslashes kept: a part may be a list itself. */
export function splitAt(text: string, sign: ';' | '@'): string[] {
  // Nearly always; and a file has tens of thousands of these cells.
  if (!text.includes('\\')) return text.split(sign).map((part) => part.trim());
  const parts = [''];
  for (const [piece] of text.matchAll(/\\[^]|[^]/gu)) {
    if (piece === sign) parts.push('');
    else parts.push((parts.pop() ?? '') + piece);
  }
  return parts.map((part) => part.trim());
}

/** A text as it was before `joinEscaped`. */
export function unescaped(text: string): string {
  return text.replaceAll(/\\([^])/gu, '$1');
}
