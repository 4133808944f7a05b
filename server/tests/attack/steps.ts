import { dirname, join } from 'node:path';
import { cutShort } from '#store/tests/cutShort.ts';
import { stepKills } from '#store/tests/stepKills.ts';
import type { Draw, Tally } from './tally.ts';

/**
 * A program that founds, logs, replaces, snapshots, restores or migrates, drawn by lot, is killed at steps that are drawn, or finds no
 * room on the disk after so many kilobytes. What is left is whole, as it was or as it was to be.
 */
export async function steps(path: string, draw: Draw): Promise<Tally> {
  const what = Object.keys(cutShort)[draw(0, Object.keys(cutShort).length - 1)]!;
  const kills = await stepKills();
  const tally: Tally = { tried: {}, survived: 0, faults: [] };
  async function attempt(how: string, left: Promise<string>, look: (path: string) => Promise<unknown>) {
    tally.tried[how] = (tally.tried[how] ?? 0) + 1;
    try {
      await look(join(await left, 'club.sqlite'));
      tally.survived += 1;
    } catch (error) {
      tally.faults.push(`${what}, ${how}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  try {
    const folder = dirname(path);
    const look = await cutShort[what]!(path);
    const count = await kills.stepsOf(what, folder);
    for (let i = 0; i < 6; i += 1) {
      const step = draw(1, count);
      await attempt('kills at a step', kills.killedAt(what, folder, step), look);
    }
    for (let i = 0; i < 3; i += 1)
      await attempt('full disks', kills.withRoomFor(what, folder, draw(0, 300)), look);
    return tally;
  } finally {
    kills.dispose();
  }
}
