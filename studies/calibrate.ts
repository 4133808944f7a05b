import { Command } from 'commander';
import { Piscina } from 'piscina';
import type { Ranks } from './calibrateOne.ts';
import { percent } from './percent.ts';
import { rankSummary } from './rankSummary.ts';
import { wholeFrom } from './wholeFrom.ts';

/**
 * Simulation-based calibration: lifters drawn from the prior, whose logs the model itself writes, are estimated from
 * their logs. What is believed with 80 % must then be true of 80 % of them.
 */
export async function run(args: readonly string[]): Promise<void> {
  const command = new Command('calibrate')
    .option('--lifters <count>', 'how many lifters are simulated', wholeFrom(1), 500)
    .option('--seed <number>', 'other lifters for another seed', wholeFrom(0), 1)
    .parse([...args], { from: 'user' });
  const { lifters: count, seed } = command.opts<{ lifters: number; seed: number }>();
  const threads = new Piscina<{ seed: number; index: number }, Ranks>({
    filename: new URL('./calibrateWorker.mjs', import.meta.url).href,
    maxThreads: 2,
  });
  const startedMs = Date.now();
  let done = 0;
  const all = await Promise.all(
    Array.from({ length: count }, async (_, index) => {
      const ranks = await threads.run({ seed, index });
      done++;
      if (done % 25 === 0 || done === count)
        process.stderr.write(
          `\r${done} of ${count} lifters, ${((Date.now() - startedMs) / 1000).toFixed(0)} s `,
        );
      return ranks;
    }),
  );
  await threads.destroy();
  process.stderr.write('\n');
  print(all, seed);
}

function print(all: readonly Ranks[], seed: number): void {
  const sets = all.reduce((sum, lifter) => sum + lifter.sets, 0) / all.length;
  const worth = all.map(({ effective }) => effective).toSorted((a, b) => a - b);
  console.log(`${all.length} lifters, seed ${seed}, ${sets.toFixed(0)} sets each on average.`);
  console.log(
    `Answers of a lifter are worth ${worth[Math.floor(worth.length / 2)]!.toFixed(0)} equal ones (least ${worth[0]!.toFixed(0)}).\n`,
  );
  console.log('| quantity | lifters | in 80 % | in 95 % | p of even ranks |');
  console.log('| --- | ---: | ---: | ---: | ---: |');
  for (const name of new Set(all.flatMap(({ ranks }) => Object.keys(ranks)))) {
    const ranks = all.flatMap((lifter) => lifter.ranks[name] ?? []);
    const { count, in80, in95, p } = rankSummary(ranks);
    console.log(`| ${name} | ${count} | ${percent(in80, 1)} | ${percent(in95, 1)} | ${p.toFixed(3)} |`);
  }
}
