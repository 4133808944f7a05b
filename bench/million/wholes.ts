import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { daysLater } from '#contract/words/dayWords.ts';
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
  today: string;
  records: ClubRecords;
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
    name: 'a look into the snapshot',
    does: async ({ asked }) => told(await asked.ask(`${await newest(asked, 'snapshot')}/look`)),
  },
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
    does: async ({ asked }) => told(await asked.send(`${await newest(asked, 'snapshot')}/restore`, {})),
  },
  {
    name: 'a look into the club that was replaced',
    does: async ({ asked }) => told(await asked.ask(`${await newest(asked, 'replaced')}/look`)),
  },
  {
    name: `a log of ${LINES} lines`,
    async does({ url, folder, records }) {
      const file = join(folder, 'import.json');
      await writeFile(file, JSON.stringify({ text: logOf(records.lifter.map(({ name }) => name)) }));
      return upload(`${url}/api/sets/import`, 'application/json', file);
    },
  },
  { name: 'evidence', does: async ({ asked }) => told(await asked.ask('/api/evidence')) },
  {
    name: 'what a comparison could show',
    does: async ({ asked, ...club }) => told(await asked.send('/api/comparisons/outlook', comparison(club))),
  },
  {
    name: 'a comparison drawn and told',
    async does({ asked, ...club }) {
      const { body } = await asked.send('/api/comparisons', { ...comparison(club), title: 'bench' });
      return told(await asked.ask(`/api/comparisons/${JSON.parse(body.toString()).comparison.id}`));
    },
  },
];

/** Where the newest copy of this kind is. */
async function newest(asked: Line, wanted: string): Promise<string> {
  const { copies } = JSON.parse((await asked.ask('/api/copies')).body.toString());
  const { name } = copies.find(({ kind }: { kind: string }) => kind === wanted);
  return `/api/copies/${encodeURIComponent(name)}`;
}

/** As many as a comparison takes. */
function comparison({ records, today }: Pick<At, 'records' | 'today'>): object {
  return {
    outcome: 'strength',
    lift: 'squat',
    ways: ['waves of three weeks', 'waves of four weeks'],
    startsOn: daysLater(today, 7),
    weeks: 12,
    lifterIds: records.lifter.slice(0, 200).map(({ id }) => id),
  };
}

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
