/** The few colours of every drawing: the theme's where there is one, ink on paper elsewhere. */
export const paint = {
  paper: 'var(--paper, #fff)',
  ink: 'var(--ink, #1b2230)',
  quiet: 'var(--ink-quiet, #565d6b)',
  rule: 'var(--rule, #d5d0c3)',
  ruleStrong: 'var(--rule-strong, #8d8a82)',
  iron: 'var(--iron, #c3c8d2)',
  ironLine: 'var(--iron-line, #6d7686)',
  rubber: 'var(--rubber, #a3660f)',
  rubberSoft: 'var(--rubber-soft, #e7cfa4)',
  go: 'var(--go, #17653f)',
  stop: 'var(--stop, #ab2318)',
} as const;

/** Letters in drawings. */
export const letters = {
  family: "'Archivo Variable', Archivo, 'Helvetica Neue', Arial, sans-serif",
  small: 12,
  tag: 13,
  number: 22,
} as const;

/** How wide a text comes out at most, up to bold, by three widths of Archivo's letters (em). */
export function textWidthPx(text: string, sizePx: number): number {
  const em = Array.from(text, (letter) =>
    ' .,:/iljt'.includes(letter) ? 0.34 : 'mwMW%'.includes(letter) ? 0.97 : 0.6,
  );
  return sizePx * em.reduce((sum, width) => sum + width, 0);
}

/** The first of several ways to say it that fits; none: nothing is better than a cut word. */
export function firstThatFits(texts: readonly string[], sizePx: number, roomPx: number): string {
  return texts.find((text) => textWidthPx(text, sizePx) <= roomPx) ?? '';
}
