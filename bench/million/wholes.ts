import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Line } from '../crowd/line.ts';
import { download, upload } from './files.ts';
import { mb } from './mb.ts';

const DAY = 'day-speed-squat';
const LINES = 100_000;
const SETS_A_DAY = 20;

interface At {
  url: string;
  /** Where files are put that are then sent. */
  folder: string;
  asked: Line;
  /** What the lifters are called. */
  names: readonly string[];
}

/** What reads or writes the whole club, or much of it, by name; `does` tells what came of it. */
export interface Whole {
  name: string;
  does: (at: At) => Promise<string>;
}

const archiveIn = (folder: string) => join(folder, 'archive.json');

export const wholes: readonly Whole[] = [
  { name: 'loads of a day', does: async ({ asked }) => told(await asked.send(`/api/days/${DAY}/solve`, {})) },
  { name: 'a snapshot', does: async ({ asked }) => told(await asked.send('/api/copies', {})) },
  {
    name: 'the log as a table',
    does: async ({ url, folder }) => mb(await download(`${url}/api/sets/csv`, join(folder, 'log.csv'))),
  },
  {
    name: 'the archive',
    does: async ({ url, folder }) => mb(await download(`${url}/api/archive`, archiveIn(folder))),
  },
  {
    name: 'the archive looked at',
    does: ({ url, folder }) => upload(`${url}/api/archive?dryRun=1`, 'application/json', archiveIn(folder)),
  },
  {
    name: 'the archive in the place of the club',
    does: ({ url, folder }) => upload(`${url}/api/archive?replace=1`, 'application/json', archiveIn(folder)),
  },
  {
    name: 'the snapshot in the place of the club',
    async does({ asked }) {
      const { copies } = JSON.parse((await asked.ask('/api/copies')).body.toString());
      const { name } = copies.find(({ kind }: { kind: string }) => kind === 'snapshot');
      return told(await asked.send(`/api/copies/${encodeURIComponent(name)}/restore`, {}));
    },
  },
  {
    name: `a log of ${LINES} lines`,
    async does({ url, folder, names }) {
      const file = join(folder, 'import.json');
      await writeFile(file, JSON.stringify({ text: logOf(names) }));
      return upload(`${url}/api/sets/import`, 'application/json', file);
    },
  },
  { name: 'evidence', does: async ({ asked }) => told(await asked.ask('/api/evidence')) },
];

function told({ status, body }: { status: number; body: Buffer }): string {
  return `${status}, ${mb(body.length)}`;
}

/** Sets that the club's log has not: years before it, everybody in turn, so many a day. */
function logOf(names: readonly string[]): string {
  const ofDay = names.length * SETS_A_DAY;
  const lines = Array.from({ length: LINES }, (_, i) => {
    const doneOn = new Date(Date.UTC(2015, 0, 1 + Math.floor(i / ofDay))).toISOString().slice(0, 10);
    return `${doneOn},"${names[i % names.length]}",squat,${100 + 2.5 * (i % 20)},${1 + (i % 5)}`;
  });
  return `date,lifter,lift,bar kg,reps\n${lines.join('\n')}\n`;
}
