import { parseTable } from '#contract/csv/parseTable.ts';
import { notTakenSentence } from '#contract/log/columnsNotTaken.ts';
import { neededColumns } from '#contract/log/logColumns.ts';
import type { LogFileAnswer } from '#contract/log/logFileAnswer.ts';
import type { SlipAsked } from '#contract/log/slipAsked.ts';
import { suggestColumns } from '#contract/log/suggestColumns.ts';
import { slipQuestion } from '#contract/words/unitSlipSentence.ts';
import type { ImportAsked } from '#server/jobs/importLog.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { askApp } from './askApp.ts';
import { CliError } from './CliError.ts';

interface LogOptions {
  dryRun?: boolean;
  column?: string[];
  slips?: keyof typeof slipWords;
}

/** What `--slips` can say, and what it means for sets that look like pounds, or a nought too many. */
export const slipWords = {
  keep: 'asWritten',
  right: 'checked',
  convert: 'asMeant',
  'leave-out': 'leftOut',
} as const;

/** Takes a file of sets in, or says what it would do, with the columns as they were understood. */
export async function takeLog(
  store: ClubStore,
  text: string,
  { dryRun = false, column, slips }: LogOptions,
): Promise<void> {
  const columns = column ? withSuggested(namedOnce(column), suggestedFor(text)) : null;
  const send = async (asked: Pick<ImportAsked, 'slips' | 'dryRun'>) => {
    const answer = await askApp(store, '/sets/import', {
      method: 'POST',
      body: JSON.stringify({ text, columns, ...asked }),
      headers: { 'content-type': 'application/json' },
    });
    return (await answer.json()) as LogFileAnswer;
  };
  // Which slips there are only a first look tells; without a word about them they are taken as written.
  const seen = slips === undefined ? [] : (await send({ slips: {}, dryRun: true })).slips;
  const takings = Object.fromEntries(seen.map(({ key }) => [key, slipWords[slips ?? 'keep']]));
  const found = await send({ slips: takings, dryRun });
  if (dryRun) process.stdout.write(understood(columns ?? found.suggested, found.units));
  for (const said of found.readAs) process.stdout.write(`${said}\n`);
  const left = notTakenSentence(found.notTaken);
  if (left !== null) process.stdout.write(`${left}\n`);
  if (found.problems.length > 0) throw new CliError(wrong(found, columns ?? found.suggested), 2);
  for (const slip of found.slips) process.stdout.write(slipText(slip, slips, dryRun));
  const { rows, added, alreadyThere, firstOn, lastOn, lifters } = found;
  const span = firstOn === null ? '' : ` From ${firstOn} to ${lastOn}, by ${lifters.join(', ')}.`;
  process.stdout.write(
    `${dryRun ? 'Would import' : 'Imported'} ${rows} ${rows === 1 ? 'line' : 'lines'} of the log; sets: ${added} new, ${alreadyThere} already there.${span}\n`,
  );
}

/** The question of a slip, its bars before and after, and what becomes of it. */
function slipText(slip: SlipAsked, slips: LogOptions['slips'], dryRun: boolean): string {
  const bars = slip.bars.map(
    ({ writtenKg, meantKg, sets }) => `  ${writtenKg} kg would be ${meantKg.toFixed(1)} kg, sets: ${sets}\n`,
  );
  const done = {
    keep: 'Imported as written, and kept out of the estimate.',
    right: 'Imported as written and marked as right: the estimate reads them.',
    convert: 'Imported with the bars that were meant.',
    'leave-out': 'Left out.',
  }[slips ?? 'keep'];
  const hint =
    slips === undefined
      ? ' --slips convert imports them with the bars that were meant, --slips right marks them as right, --slips leave-out imports none of them.'
      : '';
  return `${slipQuestion(slip, slip.lifter, (date) => date)}\n${bars.join('')}  ${dryRun ? 'Would be: ' : ''}${done}${hint}\n`;
}

/** What the headers are taken for. */
function suggestedFor(text: string): Record<string, string> {
  const table = parseTable(text);
  const [header] = 'lines' in table ? table.lines : [];
  return suggestColumns(header?.cells.map((cell) => cell.trim()) ?? []);
}

/** The columns that were named, and by likeness those that were not, from headers still free. */
function withSuggested(
  given: readonly [string, string][],
  suggested: Record<string, string>,
): Record<string, string> {
  const taken = new Set(given.map(([, header]) => header));
  const free = Object.entries(suggested).filter(([, header]) => !taken.has(header));
  return { ...Object.fromEntries(free), ...Object.fromEntries(given) };
}

function namedOnce(given: readonly string[]): [string, string][] {
  const pairs = given.map(named);
  const [twice] = pairs.find(([name], i) => pairs.findIndex(([other]) => other === name) < i) ?? [];
  if (twice === undefined) return pairs;
  throw new CliError(`--column names ${twice} twice; it can have one header of the file only.`, 2);
}

function named(given: string): [string, string] {
  const at = given.indexOf('=');
  if (at > 0 && at < given.length - 1) return [given.slice(0, at), given.slice(at + 1)];
  throw new CliError(`--column ${given} names no header; write it as name=header.`, 2);
}

function understood(columns: Record<string, string>, units: Record<string, string>): string {
  const lines = Object.entries(columns).map(([name, header]) => {
    const unit = units[name] === undefined ? '' : ` in ${units[name]}`;
    return `${name.padEnd(14)}${header}${unit}\n`;
  });
  return lines.join('');
}

function wrong(found: LogFileAnswer, columns: Record<string, string>): string {
  const { problems, problemCount } = found;
  const lines = problems.map(
    ({ line, column, message }) => `Line ${line}${column === '' ? '' : `, ${column}`}: ${message}`,
  );
  const more = problemCount - problems.length;
  const missing = found.headers.length === 0 ? undefined : neededColumns.find((name) => !(name in columns));
  return [
    ...lines,
    ...(more > 0 ? [`And ${more} more.`] : []),
    ...(missing === undefined
      ? []
      : [
          `The file has ${found.headers.join(', ')}; --column ${missing}=HEADER says which of them is the ${missing}.`,
        ]),
  ].join('\n');
}
