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

/** How wide a text comes out, near enough to decide where it fits. Archivo's figures are 0.56 em wide. */
export function textWidthPx(text: string, sizePx: number): number {
  return text.length * sizePx * 0.54;
}
