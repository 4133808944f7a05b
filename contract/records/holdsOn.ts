import type { Restriction } from './lifters.ts';

/** Whether a restriction holds on a day: its first and its last day counted. */
export function holdsOn({ fromOn, untilOn }: Pick<Restriction, 'fromOn' | 'untilOn'>, day: string): boolean {
  return fromOn <= day && (untilOn === null || day <= untilOn);
}
