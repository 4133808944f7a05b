import { Command } from 'commander';
import type { ClubStore } from '#store/ClubStore.ts';
import { askApp } from '../askApp.ts';
import { CliError } from '../CliError.ts';
import { clubOption, withClub } from '../clubFile.ts';
import { liftersNamed } from '../liftersNamed.ts';
import { writeOutput } from '../writeOutput.ts';

interface CalendarOptions {
  club: string;
  lifter?: string;
  out?: string;
}

/** `calendar`: the training days as a file for any calendar. */
export function calendarCommand(): Command {
  return new Command('calendar')
    .summary('the training days as a calendar file')
    .description(
      'Writes the training days, from the year before to the one after next, as an iCalendar file (RFC 5545). No loads and no notes are in it, and names only where the club wants them there.',
    )
    .option('--lifter <name>', 'only the days of this lifter')
    .option('-o, --out <file>', 'write to this file instead of standard output')
    .addOption(clubOption())
    .action(writeCalendar);
}

async function writeCalendar({ club, lifter, out }: CalendarOptions): Promise<void> {
  const content = await withClub(club, async (store) => {
    const query = lifter === undefined ? '' : `?lifterId=${encodeURIComponent(await idOf(store, lifter))}`;
    return (await askApp(store, `/calendar.ics${query}`)).text();
  });
  await writeOutput(content, out);
}

async function idOf(store: ClubStore, name: string): Promise<string> {
  const [only, ...others] = liftersNamed(await store.list('lifter'), name);
  if (others.length === 0) return only.id;
  throw new CliError(
    `--lifter is "${name}"; the club has ${others.length + 1} lifters of that name: take the file of the one who is meant under Gear, Club.`,
    2,
  );
}
