import { Command, Option } from 'commander';
import { Piscina } from 'piscina';
import type { Lift } from '#core/lifter/populationShape.ts';
import { percent } from './percent.ts';
import { modelNames } from './situations/otherModels.ts';
import { type Situation, situations } from './situations/situationLog.ts';
import type { SituationAsked, SituationResult } from './situations/situationOne.ts';
import { wholeFrom } from './wholeFrom.ts';

const lifts: readonly Lift[] = ['squat', 'bench', 'deadlift'];

/** Lifters of two other models than the estimate's in situations in which it may err: how often its intervals hold, and how far off it is. */
export async function run(args: readonly string[]): Promise<void> {
  const command = new Command('situations')
    .option('--lifters <count>', 'how many lifters a situation, model and lift', wholeFrom(1), 24)
    .option('--seed <number>', 'other lifters for another seed', wholeFrom(0), 1)
    .addOption(new Option('--only <situations...>', 'these situations alone').choices(situations))
    .addOption(new Option('--lifts <lifts...>', 'these lifts alone').choices(lifts))
    .parse([...args], { from: 'user' });
  const given = command.opts<{ lifters: number; seed: number; only?: Situation[]; lifts?: Lift[] }>();
  const threads = new Piscina<SituationAsked, SituationResult>({
    filename: new URL('./situations/situationWorker.mjs', import.meta.url).href,
    maxThreads: 2,
  });
  const cells = (given.only ?? situations).flatMap((situation) =>
    (given.lifts ?? lifts).flatMap((lift) => modelNames.map((model) => ({ situation, model, lift }))),
  );
  const rows = await Promise.all(
    cells.map((cell) =>
      Promise.all(
        Array.from({ length: given.lifters }, (_, i) =>
          // The same lifters in every situation, others in every lift and model.
          threads.run({ ...cell, seed: given.seed * 1_000_003 + 10_007 * kindOf(cell) + i }),
        ),
      ),
    ),
  );
  await threads.destroy();
  console.log('| situation | lift | model | lifters | in 80 % | in 95 % | median off | half width |');
  console.log('| --- | --- | --- | ---: | ---: | ---: | ---: | ---: |');
  for (const row of rows) console.log(lineOf(row));
}

function kindOf({ lift, model }: Pick<SituationAsked, 'lift' | 'model'>): number {
  return lifts.indexOf(lift) * modelNames.length + modelNames.indexOf(model);
}

function lineOf(row: readonly SituationResult[]): string {
  const { situation, lift, model } = row[0]!;
  const share = (is: (one: SituationResult) => boolean) => percent(row.filter(is).length / row.length, 0);
  const mean = (value: (one: SituationResult) => number) =>
    row.reduce((sum, one) => sum + value(one), 0) / row.length;
  const off = Math.exp(mean(({ medianKg, truthKg }) => Math.log(medianKg / truthKg))) - 1;
  const half = mean(({ low80Kg, high80Kg }) => Math.log(high80Kg / low80Kg) / 2);
  return `| ${[
    situation,
    lift,
    model,
    row.length,
    share(({ isIn80 }) => isIn80),
    share(({ isIn95 }) => isIn95),
    `${off > 0 ? '+' : ''}${percent(off, 0)}`,
    percent(half, 0),
  ].join(' | ')} |`;
}
