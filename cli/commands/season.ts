import { Command } from 'commander';
import { clubOption, withClub } from '../clubFile.ts';
import { todayOfClub } from '../todayOfClub.ts';

interface SeasonOptions {
  club: string;
  json?: true;
  bars?: true;
}

/** `season`: what the club's seasons come to, and what to look at in them. */
export function seasonCommand(): Command {
  return new Command('season')
    .summary("the club's seasons, week by week, and what to look at")
    .description(
      'Lays every season of the club backwards from its meets, as the records are now: weeks with their phase and what they come to, warnings with what would put them right, and where racks and bands are not enough for all seasons together.',
    )
    .option(
      '--bars',
      'the coming days to bar and bands as well, for everybody, by what is known today; that takes a minute or more',
    )
    .option('--json', 'every week, day and group, and all warnings, as JSON in SI units')
    .addOption(clubOption())
    .addHelpText(
      'after',
      `
Shares are of the maximum that percentages refer to; weeks ahead are aims, not bars, and bars of the coming days stand only until the day is worked out. Limits on volume and on rises are rules of thumb.
A plan is not a permission: local rules and the coach come first.`,
    )
    .action(writeSeasons);
}

async function writeSeasons({ club, json, bars }: SeasonOptions): Promise<void> {
  const { clubSeason } = await import('#reckon/season/clubSeason.ts');
  const { gearAhead } = await import('#reckon/season/gearAhead.ts');
  const { seasonText } = await import('../seasonText.ts');
  const { nearDaysOf } = await import('../nearDaysOf.ts');
  const text = await withClub(club, async (store) => {
    const { records } = await store.records();
    const today = todayOfClub(records);
    const seasons = records.season.map(({ id }) => clubSeason(records, id, today));
    const gear = gearAhead(records, today);
    const near = bars ? await nearDaysOf(store, records.club[0], seasons, today) : null;
    return json
      ? `${JSON.stringify({ seasons, gear, ...(near && { near }) }, null, 2)}\n`
      : seasonText(records, seasons, gear, near, today);
  });
  process.stdout.write(text);
}
