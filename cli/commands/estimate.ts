import { Command } from 'commander';
import { lastDayAhead } from '#contract/projection/lastDayAhead.ts';
import { localDate } from '#contract/records/kind.ts';
import type { Lifter } from '#contract/records/lifters.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { CliError } from '../CliError.ts';
import { clubOption, withClub } from '../clubFile.ts';
import { estimatedLifts } from '../estimatedLifts.ts';
import { liftersNamed } from '../liftersNamed.ts';
import { todayOfClub } from '../todayOfClub.ts';

interface EstimateOptions {
  club: string;
  lifter?: string;
  on?: string;
  json?: true;
}

/** `estimate`: what each lifter can do, by the whole log. */
export function estimateCommand(): Command {
  return new Command('estimate')
    .summary('what each lifter can do, by the whole log')
    .description(
      'Estimates the straight competition maximum of every lifter and lift, raw and rested, from all that was logged.',
    )
    .option('--lifter <name>', 'only this lifter')
    .option('--on <date>', "as known on this day, as 2026-11-25; without it, today by the club's clock")
    .option('--json', 'everything that is known of each lift, as JSON in SI units')
    .addOption(clubOption())
    .addHelpText(
      'after',
      `
Everybody is worked out even if you ask for one lifter, since what the others show says what to expect of each.
An estimate is no attempt: it may be wrong by its interval and more, and today is not an average day.`,
    )
    .action(writeEstimates);
}

async function writeEstimates(options: EstimateOptions): Promise<void> {
  await withClub(options.club, async (store) => {
    const { records } = await store.records();
    const on = dayAskedFor(options.on, todayOfClub(records));
    const lifters = askedFor(records.lifter, options.lifter, on);
    const estimates = await estimatedLifts(store, lifters, on);
    process.stdout.write(
      options.json
        ? `${JSON.stringify(estimates, null, 2)}\n`
        : await inWords(estimates, lifters, records.club[0]?.massUnit ?? 'kg', on),
    );
  });
}

/** Today where no day is named; further ahead than a year nothing can be said of anybody. */
function dayAskedFor(given: string | undefined, today: string): string {
  if (given === undefined) return today;
  if (!localDate.safeParse(given).success)
    throw new CliError(`--on is "${given}"; it must be a date such as ${today}.`, 2);
  const last = lastDayAhead(today);
  if (given > last) throw new CliError(`--on is "${given}"; it must be a day up to ${last}.`, 2);
  return given;
}

/** The one by name, or everybody who had not left. */
function askedFor(lifters: readonly Lifter[], name: string | undefined, on: string): Lifter[] {
  if (name === undefined) {
    return lifters
      .filter(({ leftOn }) => leftOn === null || leftOn > on)
      .toSorted((a, b) => a.name.localeCompare(b.name));
  }
  return liftersNamed(lifters, name);
}

async function inWords(
  estimates: readonly StrengthEstimate[],
  lifters: readonly Lifter[],
  unit: 'kg' | 'lb',
  on: string,
): Promise<string> {
  if (estimates.length === 0) return `Nothing was logged up to ${on} that says what anybody can do.\n`;
  const { fromSi } = await import('#core/units/units.ts');
  const { table } = await import('../table.ts');
  const mass = (kg: number) => fromSi(kg, unit).toFixed(1);
  const nameOf = new Map(lifters.map(({ id, name }) => [id, name]));
  const rows = estimates.map(({ lifterId, lift, maxKg, setCount, lastSetOn }) => [
    nameOf.get(lifterId) ?? '',
    lift,
    mass(maxKg.median),
    mass(maxKg.low80),
    mass(maxKg.high80),
    mass(maxKg.low95),
    mass(maxKg.high95),
    setCount,
    lastSetOn ?? '',
  ]);
  const head = ['', '', unit, '80 % from', 'to', '95 % from', 'to', 'sets', 'last on'];
  return [
    table(head, rows),
    '',
    `Estimated maximum on ${on}: straight weight, raw, on an average rested day. Not measured.`,
    "Not a substitute for qualified coaching; openers and attempts are the coach's to choose.",
    '',
  ].join('\n');
}
