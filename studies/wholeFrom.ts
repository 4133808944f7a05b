import { InvalidArgumentError } from 'commander';

/** Reads a whole number of at least `least` that an option was given. */
export function wholeFrom(least: number): (given: string) => number {
  return (given) => {
    if (/^\d+$/.test(given) && Number(given) >= least) return Number(given);
    throw new InvalidArgumentError(`It must be a whole number from ${least} up.`);
  };
}
