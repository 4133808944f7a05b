import type { MethodProblem } from '#contract/season/readMethod.ts';

/**
 * The first field of a form whose text is not in the document, as it cannot be read or lies outside what is allowed: the field alone
 * knows of it, and with the field it would be lost. `told`: what is wrong with the document, which stays wherever one looks.
 */
export function untakenField(form: HTMLElement, told: readonly MethodProblem[]): HTMLElement | null {
  const wrong = [...form.querySelectorAll<HTMLElement>(':invalid:not(fieldset, form)')];
  return wrong.find(({ id }) => told.every(({ place }) => place !== id)) ?? null;
}
