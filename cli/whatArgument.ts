import { Argument } from 'commander';
import { CliError } from './CliError.ts';

/** What goes out or comes in: the whole club, the log of sets done, or all records of one kind. */
export function whatArgument(): Argument {
  return new Argument(
    '<what>',
    '"archive" for the whole club as JSON; "log" for the sets done, or one kind of record, as CSV: "kinds" lists them',
  );
}

/** Prints the kinds where they are asked for, and refuses what is neither archive nor log nor kind. */
export async function knowsWhat(what: string): Promise<boolean> {
  if (what === 'archive' || what === 'log') return true;
  const { allKinds, kindNames } = await import('#contract/records/allKinds.ts');
  if (what in allKinds) return true;
  const known = kindNames.join(', ');
  if (what !== 'kinds')
    throw new CliError(`${what} is neither archive nor log nor a kind of record; the kinds are ${known}.`, 2);
  process.stdout.write(`${kindNames.map((name) => `${name.padEnd(14)}${allKinds[name].word}`).join('\n')}\n`);
  return false;
}
