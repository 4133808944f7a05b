import type { WrittenField } from './writtenSet.ts';

/** The fields of all sets stand in one element, each marked with its field and, beyond the plan, with `data-more`. */
const pageOf = (from: Element) => from.closest('.from-paper');

/** To the same field of the set above or below, whoever's it is. */
export function toNeighbour(from: HTMLInputElement, field: WrittenField, by: 1 | -1): void {
  const column = fieldsIn(pageOf(from), `[data-field=${field}]`);
  focusOn(column[column.indexOf(from) + by]);
}

/** To the same field of the lifter's next planned set; behind the last one, to what saves the lifter's sets. */
export function toNextSet(from: HTMLInputElement, field: WrittenField): void {
  const lifter = from.closest('.paper-lifter');
  const column = fieldsIn(lifter, `[data-field=${field}]`);
  const next = column.slice(column.indexOf(from) + 1).find((input) => !('more' in input.dataset));
  if (next) focusOn(next);
  else lifter?.querySelector<HTMLElement>('[data-saves]')?.focus();
}

/** To the first open set below a lifter's; where there is none, to what saves all. */
export function toNextLifter(from: Element): void {
  const lifters = [...(pageOf(from)?.querySelectorAll('.paper-lifter') ?? [])];
  const below = lifters.slice(lifters.findIndex((lifter) => lifter.contains(from)) + 1);
  const [next] = below.flatMap((lifter) => fieldsIn(lifter, '[data-field=speeds]:not([data-more])'));
  if (next) focusOn(next);
  else pageOf(from)?.querySelector<HTMLElement>('[data-saves-all]')?.focus();
}

/** To one field of one set. */
export function toField(page: Element, key: string, field: WrittenField): void {
  focusOn(fieldsIn(page, `[data-field=${field}]`).find((input) => input.dataset.set === key));
}

function fieldsIn(element: Element | null, which: string): HTMLInputElement[] {
  return [...(element?.querySelectorAll<HTMLInputElement>(`input${which}`) ?? [])];
}

function focusOn(input: HTMLInputElement | undefined): void {
  input?.focus();
  input?.select();
}
