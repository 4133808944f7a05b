import { Command, Option } from 'commander';
import type { DayPlan } from '#contract/day/dayPlan.ts';
import { namesOf } from '#contract/day/namesOf.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { localDate } from '#contract/records/kind.ts';
import { likelyToMiss } from '#contract/words/likelyToMiss.ts';
import { logsWorkedOut } from '#contract/words/logsWorkedOut.ts';
import { wordsOf } from '#reckon/day/wordsOf.ts';
import { wordsSince } from '#reckon/day/wordsSince.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { askApp } from '../askApp.ts';
import { CliError } from '../CliError.ts';
import { clubOption, withClub } from '../clubFile.ts';
import type { SolvedDay } from '../SolvedDay.ts';
import { todayOfClub } from '../todayOfClub.ts';
import { writeOutput } from '../writeOutput.ts';

interface DayOptions {
  club: string;
  date?: string;
  form: 'text' | 'csv' | 'json';
  unit?: 'kg' | 'lb';
  again?: boolean;
  byLog?: boolean;
  newWords?: boolean;
  out?: string;
}

/** `day`: the sheet of a training day. */
export function dayCommand(): Command {
  return new Command('day')
    .summary('the sheet of a training day')
    .description(
      'Writes what each lifter has on the bar on a training day, and what that really is for that lifter.',
    )
    .option('--date <date>', "the day, as 2026-11-25; without it, today by the club's clock")
    .addOption(
      new Option('--form <form>', 'how to write it').choices(['text', 'csv', 'json']).default('text'),
    )
    .addOption(
      new Option('--unit <unit>', "masses in this unit, in text only; without it, the club's").choices([
        'kg',
        'lb',
      ]),
    )
    .option('--again', 'work the day out again, even if that was done before')
    .addOption(
      new Option(
        '--by-log',
        'if the log says more by now: give speeds and chances by it under a new number, with the bars as they are',
      ).conflicts('again'),
    )
    .addOption(
      new Option(
        '--new-words',
        'if titles, notes or names were changed since: say them as they are now under a new number, with the bars as they are',
      ).conflicts(['again', 'byLog']),
    )
    .option('-o, --out <file>', 'write to this file instead of standard output')
    .addOption(clubOption())
    .addHelpText(
      'after',
      '\nA day that was not worked out yet is worked out first and kept, as on the screen.',
    )
    .action(writeDay);
}

async function writeDay(options: DayOptions): Promise<void> {
  const { date, form, unit } = options;
  if (unit !== undefined && form !== 'text') {
    throw new CliError(
      `--unit is "${unit}"; with --form ${form} it must be left out, for ${form} is always in kg and N.`,
      2,
    );
  }
  if (date !== undefined && !localDate.safeParse(date).success) {
    throw new CliError(`--date is "${date}"; it must be a date such as 2026-11-25.`, 2);
  }
  const solved = await withClub(options.club, (store) => solvedDays(store, date, options));
  await writeOutput(await written(solved, options), options.out);
}

async function solvedDays(
  store: ClubStore,
  asked: string | undefined,
  { again = false, byLog = false, newWords = false }: DayOptions,
): Promise<SolvedDay[]> {
  const { records } = await store.records();
  const date = asked ?? todayOfClub(records);
  const days = records.day.filter((day) => day.date === date);
  if (days.length === 0) throw new CliError(noDayOn(date, records), 2);
  const { planOf } = await import('#contract/day/planOf.ts');
  const { signPrescription } = await import('#server/signPrescription.ts');
  const solved: SolvedDay[] = [];
  for (const day of days) {
    const kept = again ? null : await store.latestPrescription(day.id);
    // One that an older program wrote in another shape is worked out anew.
    const plan = kept && planOf(kept);
    const reworded = newWords && plan !== null && wordsSince(plan, records, day).length > 0;
    const prescription =
      kept === null || plan === null
        ? await post(store, `/days/${encodeURIComponent(day.id)}/solve`)
        : reworded
          ? await post(store, retellingOf(kept), { number: kept.number, by: 'words' })
          : await retold(store, signPrescription(kept), plan, byLog);
    solved.push({ plan: prescription.document!, prescription, records });
  }
  return solved;
}

/**
 * The number that stands, as it was kept. Where the log could tell more of its bars by now it is told so under a new number, if that
 * is wanted; otherwise standard error says of whom.
 */
async function retold(
  store: ClubStore,
  kept: SignedPrescription,
  plan: DayPlan,
  wanted: boolean,
): Promise<SignedPrescription> {
  const path = retellingOf(kept);
  const told = (await (await askApp(store, path)).json()) as Record<'lifters' | 'likelyToMiss', string[]>;
  if (told.lifters.length === 0) return kept;
  if (wanted) return post(store, path, { number: kept.number });
  const logs = logsWorkedOut(namesOf(plan, told.lifters));
  const warning = likelyToMiss(namesOf(plan, told.likelyToMiss));
  process.stderr.write(
    `Number ${kept.number} is written as it was kept. ${logs}: --by-log gives speeds and chances by the log as number ${kept.number + 1}, --again works out the bars again too.${warning && ` ${warning}`}\n`,
  );
  return kept;
}

function retellingOf({ dayId }: Pick<SignedPrescription, 'dayId'>): string {
  return `/days/${encodeURIComponent(dayId)}/retelling`;
}

async function post(store: ClubStore, path: string, body: object = {}): Promise<SignedPrescription> {
  const headers = { 'content-type': 'application/json' };
  const answer = await askApp(store, path, { method: 'POST', body: JSON.stringify(body), headers });
  return (await answer.json()) as SignedPrescription;
}

function noDayOn(date: string, { day }: ClubRecords): string {
  const dates = [...new Set(day.map((one) => one.date))].sort((a, b) => (a < b ? -1 : 1));
  if (dates.length === 0) return 'The club has no training day yet; plan one on the screen first.';
  return `There is no training day on ${date}; the club has ${dates.join(', ')}.`;
}

async function written(solved: SolvedDay[], { form, unit }: DayOptions): Promise<string> {
  if (form === 'json') return `${JSON.stringify(solved.map(asJson), null, 2)}\n`;
  if (form === 'csv') return (await import('../dayCsv.ts')).dayCsv(solved);
  return (await import('../dayText.ts')).dayText(solved, unit);
}

/** The plan as it was kept, with what tells it from every other, and the coach's notes for one lifter that stand under its number. */
function asJson({ plan, prescription, records }: SolvedDay): object {
  const { number, solvedAt, fingerprint, document } = prescription;
  const { notes } = wordsOf(plan, records);
  return { number, solvedAt, fingerprint, notes, ...(document as DayPlan) };
}
