import { Command } from 'commander';
import { counted } from '#contract/words/counted.ts';
import { percent } from '#contract/words/percent.ts';
import type { TrackReading } from '#core/track/Track.ts';
import { CliError } from '../CliError.ts';
import { readInputText } from '../readInputText.ts';

/** `track`: reps and bar speeds out of the bar's height over time. */
export function trackCommand(): Command {
  return new Command('track')
    .summary("reps and bar speeds from the bar's height over time")
    .description(
      'Finds the reps of a set in a table of bar height over time: mean and peak speed of each, and where a miss stopped.',
    )
    .argument('[track]', 'CSV file; without it, or with -, standard input')
    .option('--json', 'the same as JSON, in SI units')
    .addHelpText(
      'after',
      `
The first line of the CSV names the columns and their units:
  t_s,z_m,x_m
  0.00,1.512,0.001
  0.02,1.511,0.001
Time in s, ms or min; height z and place fore-aft x (may be left out) in m, cm, mm or in. Semicolons or tabs may
stand between the cells, and decimals may then have a comma. 15 readings a second or more; a line without height
is passed over.`,
    )
    .action(findReps);
}

async function findReps(file: string | undefined, options: { json?: true }): Promise<void> {
  const { readTrack } = await import('#contract/track/readTrack.ts');
  const { repsOfTrack } = await import('#core/track/repsOfTrack.ts');
  const track = readTrack(await readInputText(file));
  if ('problems' in track) {
    const [{ line, column, message }] = track.problems as [(typeof track.problems)[number]];
    throw new CliError(`Line ${line}${column === '' ? '' : `, ${column}`}: ${message}`, 2);
  }
  const reading = repsOfTrack(track.points);
  const { rateHz, cutoffHz, range, reps } = reading;
  process.stdout.write(
    options.json
      ? `${JSON.stringify({ rateHz, cutoffHz, range, reps }, null, 2)}\n`
      : await inWords(reading, track.passedOver),
  );
}

async function inWords({ rateHz, cutoffHz, range, reps }: TrackReading, passedOver: number): Promise<string> {
  if (range === null) return 'No rep was found: the bar never left the bottom towards lockout.\n';
  const { table } = await import('../table.ts');
  const rows = reps.map((rep, i) => [
    i + 1,
    rep.stoppedAtS === null ? 'made' : `missed at ${percent(rep.stoppedAtS)}`,
    rep.startS.toFixed(2),
    (rep.endS - rep.startS).toFixed(2),
    rep.made ? rep.meanSpeedMps.toFixed(2) : '',
    rep.peakSpeedMps.toFixed(2),
    rep.swayM === null ? '' : cm(rep.swayM),
    rep.gapS > 0.1 ? rep.gapS.toFixed(2) : '',
  ]);
  const head = ['rep', '', 'from s', 'time s', 'mean m/s', 'peak m/s', 'sway cm', 'not seen s'];
  return [
    table(head, rows),
    '',
    `Bottom ${cm(range.bottomM)} cm, lockout ${cm(range.lockoutM)} cm: ${cm(range.lockoutM - range.bottomM)} cm of range.`,
    `${rateHz.toFixed(0)} readings a second, smoothed at ${cutoffHz.toFixed(1)} Hz${passedOver > 0 ? `; ${counted(passedOver, 'line')} without a height` : ''}.`,
    '',
  ].join('\n');
}

function cm(metres: number): string {
  return (100 * metres).toFixed(1);
}
