import { Command } from 'commander';
import type { ToldComparison } from '#contract/comparison/toldComparison.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { clubOption, withClub } from '../clubFile.ts';
import { estimatedLifts } from '../estimatedLifts.ts';
import { todayOfClub } from '../todayOfClub.ts';

interface ComparisonOptions {
  club: string;
  json?: true;
}

/** `comparison`: what the club's comparisons of two ways show by now. */
export function comparisonCommand(): Command {
  return new Command('comparison')
    .summary('two ways of training compared by lot: what could be seen, and what shows')
    .description(
      'Says of every comparison of the club how large a difference could be seen, as said before anybody started, and what the log shows so far: the difference with its range, everybody counted by the way drawn, and who was taken out.',
    )
    .option('--json', 'the figures, ranges and sentences of each, as JSON')
    .addOption(clubOption())
    .addHelpText(
      'after',
      `
A comparison is planned and drawn on the page Season, or by POST /api/comparisons. It decides nothing about anybody's training: the coach does.`,
    )
    .action(writeComparisons);
}

async function writeComparisons({ club, json }: ComparisonOptions): Promise<void> {
  const told = await withClub(club, toldComparisons);
  process.stdout.write(json ? `${JSON.stringify(told, null, 2)}\n` : inWords(told));
}

async function toldComparisons(store: ClubStore): Promise<ToldComparison[]> {
  const { clubWithFormerGear } = await import('#server/jobs/clubWithFormerGear.ts');
  const { toldComparison } = await import('#reckon/comparison/toldComparison.ts');
  const { records, log } = await clubWithFormerGear(store);
  const today = todayOfClub(records);
  const byStrength = records.comparison.filter(({ planDocument }) => planDocument.outcome === 'strength');
  const ids = new Set(
    byStrength.flatMap(({ planDocument }) => planDocument.drawn.map((one) => one.lifterId)),
  );
  const drawn = records.lifter.filter(({ id }) => ids.has(id));
  const estimates = drawn.length === 0 ? [] : await estimatedLifts(store, drawn, today);
  return Promise.all(records.comparison.map((one) => toldComparison(records, log, estimates, one, today)));
}

function inWords(told: readonly ToldComparison[]): string {
  if (told.length === 0) return 'The club has no comparison of two ways: plan one on the page Season.\n';
  const parts = told.map(({ title, sentences, foretold }) =>
    [title, '', ...sentences, '', 'As said before anybody started:', ...foretold].join('\n'),
  );
  return `${[...parts, told[0]!.cautions.join('\n')].join('\n\n')}\n`;
}
