import type { KeptMethod } from '#contract/records/season.ts';

/** How a kept version of a method is called: "Raw, with bands, version 1". */
export function methodWord({
  methodDocument: { title, version },
}: Pick<KeptMethod, 'methodDocument'>): string {
  return `${title}, version ${version}`;
}
