import { firstAndMore } from './firstAndMore.ts';

/** Whose log can be gone by since a plan was made: "The logs of Ida and 7 more are worked out now". */
export function logsWorkedOut(names: readonly string[]): string {
  const whose = firstAndMore(names);
  return names.length === 1
    ? `The log of ${whose} is worked out now`
    : `The logs of ${whose} are worked out now`;
}
