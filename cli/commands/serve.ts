import { resolve } from 'node:path';
import { Command, InvalidArgumentError } from 'commander';
import type { Who } from '#contract/changes/who.ts';
import { clockBehind } from '#contract/words/clockBehind.ts';
import type { OneClub } from '#server/oneClub.ts';
import type { Served } from '#server/serve.ts';
import type { Hold } from '#store/open/holdFile.ts';
import { buildScreensWhenStale } from '../buildScreens.ts';
import { CliError } from '../CliError.ts';
import { clubOption, openClub } from '../clubFile.ts';
import { fillWithDemo } from '../fillWithDemo.ts';
import { showProgress } from '../showProgress.ts';
import { snapshotsOption } from '../snapshotsOption.ts';
import { whyNotOpenClub } from '../whyNotOpenClub.ts';

interface ServeOptions {
  club: string;
  port: number;
  demo?: boolean;
  knownFirst?: boolean;
  snapshots?: string;
  calendarOn?: string;
  calendarPort: number;
}

/** `serve`: the program for browser and tablet, on this machine alone. */
export function serveCommand(): Command {
  return new Command('serve')
    .summary('start the program for the browser')
    .description(
      'Serves the club at an address of this machine until Ctrl-C. Nothing leaves the machine, except the calendar if --calendar-on asks for it.',
    )
    .addOption(clubOption())
    .option('--port <number>', 'the port to try first; 0 for any free one', readPort, 4747)
    .addOption(snapshotsOption())
    .option(
      '--calendar-on <address>',
      'let telephones in the local network read the calendar, and nothing else: lan, or an address of this machine',
    )
    .option('--calendar-port <number>', 'the port for that, always the same', readPort, 4700)
    .option('--demo', 'fill a new club file with the invented demo club')
    .option('--known-first', "say the address once everybody's strength is known from the log")
    .action(serveClub);
}

async function serveClub({
  club,
  port,
  demo = false,
  knownFirst = false,
  snapshots,
  calendarOn,
  calendarPort,
}: ServeOptions): Promise<void> {
  const telephones =
    calendarOn === undefined ? null : { address: await lanAddressOf(calendarOn), port: calendarPort };
  await buildScreensWhenStale(say);
  const store = await openClub(club, coach, demo ? fillWithDemo : undefined);
  const hold = await holdAlone(club, store);
  const [record] = await store.list('club');
  const { serve } = await import('#server/serve.ts');
  const asked = {
    store,
    port,
    ...(snapshots !== undefined && { snapshotFolder: snapshots }),
    ...(telephones !== null && { telephones }),
  };
  const served = await serve(asked).catch(async (error) => {
    hold.release();
    await store.close();
    throw inOneSentence(error);
  });
  hold.tell(served.url);
  // Whoever reads the address may stop the program at once.
  const stop = async () => {
    await served.close();
    await store.close();
    hold.release();
  };
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void stop());
  if (knownFirst) await untilKnown(served);
  if (port !== 0 && served.port !== port)
    say(`Port ${port} is in use, perhaps by Rackwright itself; another one was found.`);
  const invented = record?.invented ? ', invented: look around, change what you like' : '';
  say(`Rackwright is running: ${served.url}`);
  say(`Club: ${record?.name ?? 'unnamed'} (${club}${invented}).`);
  if (demo && !record?.invented)
    say(
      `${club} already exists and is not the demo club: it is served as it is, and --demo adds nothing to it.`,
    );
  const clock = clockBehind((await store.standing()).madeAt, new Date());
  if (clock !== null) say(clock);
  if (served.calendarAt !== null)
    say(
      `Telephones in the local network can read the calendar at ${served.calendarAt}, by the addresses under Gear, Club; nothing else is open to them.`,
    );
  const trouble = store.trouble();
  if (trouble !== null) say(trouble);
  say('Next: open the address in a browser. Gear shows the bands, Lifters the people, Day the loads.');
  say('Ctrl-C stops it; everything is already saved.');
}

/** A club whose strength was worked out before has it at once; a new one takes half a minute, which is said. */
async function untilKnown(served: Served): Promise<void> {
  const known = served.everybodyKnown.then(() => true);
  const soon = new Promise<false>((resolve) => setTimeout(resolve, saidAfterMs, false));
  if (await Promise.race([known, soon])) return;
  say('Reading the log of every lifter once, for what each can do: half a minute on a quiet machine ...');
  const hideProgress = showProgress(served);
  await known;
  hideProgress();
}

const saidAfterMs = 2000;

/** Asked before anything is opened: an address that this machine does not have starts nothing. */
async function lanAddressOf(asked: string): Promise<string> {
  const { lanAddress } = await import('#server/calendar/lanAddress.ts');
  try {
    return lanAddress(asked);
  } catch (error) {
    throw inOneSentence(error);
  }
}

function inOneSentence(error: unknown): unknown {
  return error instanceof Error && error.name === 'CannotListen' ? new CliError(error.message) : error;
}

/** Two servers on one file would each know only half of what is done: the second says where the first is. */
async function holdAlone(club: string, store: OneClub): Promise<Hold> {
  const { holdFile } = await import('#store/open/holdFile.ts');
  try {
    const hold = holdFile(club);
    if (!('heldAt' in hold)) return hold;
    const where = hold.heldAt === null ? '' : ` at ${hold.heldAt}: open that address`;
    throw new CliError(
      `${resolve(club)} is already served by another Rackwright${where}; nothing was started, nothing changed. End the other one first to start it here.`,
    );
  } catch (error) {
    await store.close();
    throw error instanceof CliError ? error : new CliError(whyNotOpenClub(club, error));
  }
}

/** Whoever sits at a screen: it asks nobody for a name. */
const coach: Who = { name: 'the coach at this computer' };

function readPort(text: string): number {
  const port = Number(text);
  if (Number.isInteger(port) && port >= 0 && port <= 65_535) return port;
  throw new InvalidArgumentError('A port is a whole number from 0 to 65535.');
}

function say(sentence: string): void {
  process.stdout.write(`${sentence}\n`);
}
