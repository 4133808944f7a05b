import { Command } from 'commander';
import { askApp } from '../askApp.ts';
import { clubOption, withClub } from '../clubFile.ts';
import { knowsWhat, whatArgument } from '../whatArgument.ts';
import { writeOutput } from '../writeOutput.ts';

interface ExportOptions {
  club: string;
  out?: string;
}

/** `export`: the whole club as one JSON file; the log or one kind of record as CSV. */
export function exportCommand(): Command {
  return new Command('export')
    .summary('export the club: everything as JSON, the log or one kind as CSV')
    .description(
      'Writes the whole club as one JSON archive, or all logged sets or all records of one kind as CSV with units in the header.',
    )
    .addArgument(whatArgument())
    .addOption(clubOption())
    .option('-o, --out <file>', 'write to this file instead of standard output')
    .action(exportRecords);
}

async function exportRecords(what: string, { club, out }: ExportOptions): Promise<void> {
  if (!(await knowsWhat(what))) return;
  const path = pathOf[what] ?? `/records/${what}/csv`;
  await withClub(club, async (store) => {
    const { body } = await askApp(store, path);
    await writeOutput(body?.pipeThrough(new TextDecoderStream()) ?? '', out);
  });
}

const pathOf: Record<string, string> = { archive: '/archive', log: '/sets/csv' };
