import { basename } from 'node:path';
import { Command, Option } from 'commander';
import { askApp } from '../askApp.ts';
import { CliError } from '../CliError.ts';
import { clubOption, openClub, openClubToTry, openExistingClub } from '../clubFile.ts';
import { inputStream } from '../inputStream.ts';
import { readInputText } from '../readInputText.ts';
import { takeArchive } from '../takeArchive.ts';
import { slipWords, takeLog } from '../takeLog.ts';
import { knowsWhat, whatArgument } from '../whatArgument.ts';

interface ImportOptions {
  club: string;
  dryRun?: boolean;
  replace?: boolean;
  column?: string[];
  slips?: keyof typeof slipWords;
}

/** `import`: takes an archive or a CSV file in; all of it or nothing. */
export function importCommand(): Command {
  return new Command('import')
    .summary('import records: the log or one kind from CSV, everything from JSON')
    .description(
      'Imports a CSV file of logged sets or of one kind of record, or the JSON archive of a whole club. A file with even one wrong line changes nothing.',
    )
    .addArgument(whatArgument())
    .argument('[file]', 'the file; without it, or with -, standard input')
    .addOption(clubOption())
    .option('--dry-run', 'only check the file and say what it would do')
    .option(
      '--column <name=header>',
      'log: which header of the file holds which column, once for each; the rest are matched by their names',
      (given: string, before?: string[]) => [...(before ?? []), given],
    )
    .addOption(
      new Option(
        '--slips <how>',
        'log: what to do with sets that look like pounds, or a nought too many, written down as kilograms; without it they are imported as written',
      ).choices(Object.keys(slipWords)),
    )
    .option('--replace', 'archive: required, since it replaces everything the club has')
    .addHelpText(
      'after',
      '\nA line of a CSV with a known id changes that record; any other line adds one. A set that the log has already is skipped.',
    )
    .action(importRecords);
}

async function importRecords(what: string, file: string | undefined, options: ImportOptions): Promise<void> {
  if (!(await knowsWhat(what))) return;
  const { dryRun = false, replace = false } = options;
  if (what === 'archive' && !dryRun && !replace) {
    throw new CliError(
      'An archive replaces everything the club has; add --replace if that is what you want, or look at it first with --dry-run.',
      2,
    );
  }
  refuseOutOfPlace(what, options);
  const given = what === 'archive' ? await inputStream(file) : await readInputText(file);
  // Sets are of lifters that a club has; a new club can only begin with records.
  const open = what === 'log' ? openExistingClub : dryRun ? openClubToTry : openClub;
  const store = await open(options.club);
  try {
    if (typeof given !== 'string') {
      const name = file === undefined || file === '-' ? 'The file' : basename(file);
      return await takeArchive(store, given, { file: name, dryRun });
    }
    if (what === 'log') return await takeLog(store, given, options);
    const query = dryRun ? '?dryRun=1' : '';
    const answer = await askApp(store, `/records/${what}/csv${query}`, {
      method: 'POST',
      body: given,
      headers: { 'content-type': 'text/csv' },
    });
    const { rows, added, questions = [], questionCount = 0 } = (await answer.json()) as Taken;
    const done = dryRun ? 'Would import' : 'Imported';
    process.stdout.write(
      `${done} ${rows} ${rows === 1 ? 'line' : 'lines'} of ${what}: ${added} new, ${rows - added} known.\n`,
    );
    for (const { line, column, message } of questions)
      process.stderr.write(`Likely a slip in line ${line}, ${column}: ${message}\n`);
    if (questionCount > questions.length)
      process.stderr.write(`And ${questionCount - questions.length} more.\n`);
  } finally {
    await store.close();
  }
}

/** What the club says to records from a file; lines that may be slips are taken all the same. */
interface Taken {
  rows: number;
  added: number;
  questions?: { line: number; column: string; message: string }[];
  /** How many there are; the first are told. */
  questionCount?: number;
}

/** An option that this import would pass over could be meant in earnest. */
function refuseOutOfPlace(what: string, { replace, column, slips }: ImportOptions): void {
  if (replace && what !== 'archive')
    throw new CliError(`--replace is for an archive alone; ${what} is only ever added to or corrected.`, 2);
  if (slips && what !== 'log') throw new CliError(`--slips is for the log alone; ${what} holds no sets.`, 2);
  if (column && what !== 'log')
    throw new CliError(`--column is for the log alone; ${what} has columns with fixed names.`, 2);
}
