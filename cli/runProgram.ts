import { Command, CommanderError } from 'commander';
import about from '../package.json' with { type: 'json' };
import { CliError } from './CliError.ts';
import { backtestCommand } from './commands/backtest.ts';
import { bandCommand } from './commands/band.ts';
import { calendarCommand } from './commands/calendar.ts';
import { comparisonCommand } from './commands/comparison.ts';
import { computeCommand } from './commands/compute.ts';
import { dayCommand } from './commands/day.ts';
import { estimateCommand } from './commands/estimate.ts';
import { exportCommand } from './commands/export.ts';
import { importCommand } from './commands/import.ts';
import { rebuildCommand } from './commands/rebuild.ts';
import { restoreCommand } from './commands/restore.ts';
import { seasonCommand } from './commands/season.ts';
import { serveCommand } from './commands/serve.ts';
import { snapshotCommand } from './commands/snapshot.ts';
import { trackCommand } from './commands/track.ts';

/** Runs one command line, its words after the program's name, and returns the status that the process ends with. */
export async function runProgram(args: readonly string[]): Promise<number> {
  try {
    await program().parseAsync([...args], { from: 'user' });
    return 0;
  } catch (error) {
    return report(error);
  }
}

/** The terminal's front door. Commands load what they need only when they are called, so that `--help` is quick. */
function program(): Command {
  const door = new Command('rackwright')
    .description("True loads of bands, chains and bars for every lifter of a barbell club's training day.")
    .version(about.version, '--version', 'print the version')
    .helpCommand('help [command]', 'what a command does and takes')
    .addHelpText(
      'after',
      `
Ends with 0 when all went well, 1 when something failed, 2 when what was asked cannot be understood.

Bands under load and heavy lifts can hurt people: rated anchors, spotters and safeties, and local rules come
first. This program does not replace qualified coaching.`,
    )
    .exitOverride();

  for (const command of [
    serveCommand,
    dayCommand,
    seasonCommand,
    comparisonCommand,
    calendarCommand,
    bandCommand,
    estimateCommand,
    backtestCommand,
    trackCommand,
    importCommand,
    exportCommand,
    snapshotCommand,
    restoreCommand,
    rebuildCommand,
    computeCommand,
  ]) {
    door.addCommand(command().copyInheritedSettings(door));
  }
  return door;
}

/** Commander has printed its own sentence already; ours is one line; anything else is a fault of the program. */
function report(error: unknown): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
  if (error instanceof CliError) {
    process.stderr.write(`${error.message}\n`);
    return error.exitCode;
  }
  // By its name: the store is loaded only by commands that need it.
  if (error instanceof Error && error.name === 'Refusal') {
    process.stderr.write(`${error.message}\n`);
    return 1;
  }
  process.stderr.write(`${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`);
  return 1;
}
