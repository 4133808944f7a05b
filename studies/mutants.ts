import { relative } from 'node:path';
import { Command } from 'commander';
import type { Mutant } from './mutants/mutantsOf.ts';
import { type RoomTried, type TrySize, tryRoom } from './mutants/tryRoom.ts';
import { percent } from './percent.ts';
import { wholeFrom } from './wholeFrom.ts';

/** How many small faults, put into a room one at a time, the room's own tests see; those that they let pass, by file and line. */
export async function run(args: readonly string[]): Promise<void> {
  const command = new Command('mutants')
    .argument(
      '<rooms...>',
      'folders whose sources are changed and whose tests are asked, or single files of one: core/rig core/day/plates.ts',
    )
    .option('--count <mutants>', 'how many mutants a room', wholeFrom(1), 40)
    .option('--seed <number>', 'other mutants for another seed', wholeFrom(0), 1)
    .option('--minutes <number>', 'at most so long a room', wholeFrom(1), 8)
    .option(
      '--beside <folders...>',
      'tests that are asked too where the own ones see nothing: core/checks',
      [],
    )
    .parse([...args], { from: 'user' });
  const size = command.opts<TrySize>();
  const rooms: RoomTried[] = [];
  for (const room of command.args) {
    const tried = await tryRoom(process.cwd(), room, size);
    rooms.push(tried);
    for (const { mutant, isCaught, whyUntold } of tried.tried)
      if (!isCaught) console.log(lineOf(mutant) + (whyUntold === null ? '' : `\n    untold: ${whyUntold}`));
  }
  console.log(
    `\n| room | mutants | tried (seed ${size.seed}) | caught | by hanging | share | untold | of what can be told |\n| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |`,
  );
  for (const { room, possible, tried } of rooms) {
    const caught = tried.filter(({ isCaught }) => isCaught).length;
    const hung = tried.filter(({ isHung }) => isHung).length;
    const silent = tried.filter(({ isCaught, whyUntold }) => !isCaught && whyUntold !== null).length;
    const told = tried.length - silent;
    const shares = [percent(caught / tried.length, 0), silent, percent(caught / told, 0)];
    console.log(`| ${room} | ${possible} | ${tried.length} | ${caught} | ${hung} | ${shares.join(' | ')} |`);
  }
}

function lineOf({ file, line, from, to }: Mutant): string {
  return `${relative(process.cwd(), file)}:${line}  ${inOneLine(from)}  ->  ${inOneLine(to)}`;
}

function inOneLine(text: string): string {
  return text.replaceAll(/\s+/g, ' ').slice(0, 80);
}
