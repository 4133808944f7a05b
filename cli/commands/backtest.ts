import { Command, Option } from 'commander';
import type { BacktestReport } from '#contract/projection/backtestReport.ts';
import type { Tell } from '#contract/words/doing.ts';
import type { MeetsAsked } from '#server/backtest/foretellMeets.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { clubOption, withClub } from '../clubFile.ts';

interface BacktestOptions {
  club: string;
  json?: true;
  csv?: true;
}

/** `backtest`: how past meets would have been foretold. */
export function backtestCommand(): Command {
  return new Command('backtest')
    .summary('how past meets would have been forecast')
    .description(
      'Forecasts every past meet from what was known the day before, and compares it with what was lifted and with two rules of thumb.',
    )
    .option('--json', 'everything, each lift and attempt, as JSON in SI units')
    .addOption(new Option('--csv', 'a line for each lift, as CSV').conflicts('json'))
    .addOption(clubOption())
    .addHelpText(
      'after',
      `
Rules of thumb: best so far (the heaviest straight lift yet in the same equipment), and gym gain (the last meet, and as
many kilograms more as the best at one exact gym setup has grown since). It takes about a minute for a year of a club.
A forecast is no permission for an attempt.`,
    )
    .action(writeBacktest);
}

async function writeBacktest(options: BacktestOptions): Promise<void> {
  await withClub(options.club, async (store) => {
    const report = await reported(store);
    const { records } = await store.records();
    if (options.json) process.stdout.write(`${JSON.stringify(report, null, 2)}\n`);
    else if (options.csv)
      process.stdout.write((await import('../backtestCsv.ts')).backtestCsv(report, records));
    else process.stdout.write((await import('../backtestText.ts')).backtestText(report));
  });
}

async function reported(store: ClubStore): Promise<BacktestReport> {
  const { runBacktest } = await import('#server/backtest/runBacktest.ts');
  const { clubWithFormerGear } = await import('#server/jobs/clubWithFormerGear.ts');
  const { work } = await import('#server/jobs/jobs.ts');
  const { workThreads } = await import('#server/jobs/threads.ts');
  const threads = workThreads(work, { pastMeets: threadsWhileNobodyLooks });
  try {
    const foretell = (asked: MeetsAsked, tell: Tell) => threads.run('foretellMeets', asked, { tell });
    const club = await clubWithFormerGear(store);
    return await runBacktest(club, foretell, threadsWhileNobodyLooks, showProgress);
  } finally {
    if (process.stderr.isTTY) process.stderr.write('\r\u001b[K');
    await threads.close();
  }
}

/** The terminal waits for nothing else. */
const threadsWhileNobodyLooks = 2;

/** One line that is written over, where somebody sees it; a file gets ten lines in all. */
function showProgress(done: number, total: number): void {
  if (process.stderr.isTTY) process.stderr.write(`\rEstimating: ${done} of ${total} `);
  else if (Math.floor((10 * done) / total) > Math.floor((10 * Math.max(done - 1, 0)) / total))
    process.stderr.write(`Estimating: ${done} of ${total}\n`);
}
