import { readdir, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import type { KeptCopy } from '#contract/archive/keptCopy.ts';
import { Refusal } from '../Refusal.ts';

/** A copy and where it lies. */
export interface CopyFile extends KeptCopy {
  path: string;
  /** Of a snapshot: the number of the last change in it. */
  seq: number | null;
}

/** Clubs that were replaced were once kept as archives; every other copy is a file as a club's own. */
export function isArchive({ path }: Pick<CopyFile, 'path'>): boolean {
  return path.endsWith('.json');
}

/** Where snapshots of a club are put if nobody says otherwise. */
export function snapshotFolderOf(clubPath: string): string {
  return `${clubPath}.snapshots`;
}

export function snapshotName(clubPath: string, at: Date, seq: number): string {
  return `${basename(clubPath)}.snapshot-${at.toISOString().replaceAll(/[:.]/g, '-')}-${seq}.sqlite`;
}

/** Every copy of a club, the newest first: snapshots in `folder`, clubs that were replaced beside the club's file. */
export async function keptCopies(clubPath: string, folder: string): Promise<CopyFile[]> {
  const [snapshots, replaced] = await Promise.all([
    copiesIn(folder, `${basename(clubPath)}.snapshot-`, snapshotEnd),
    copiesIn(dirname(clubPath), `${basename(clubPath)}.before-restore-`, replacedEnd),
  ]);
  return [...snapshots, ...replaced].toSorted((a, b) => (a.takenAt < b.takenAt ? 1 : -1));
}

/** The copy of this name; refused where there is none. Whatever is no name in the list is none. */
export async function copyNamed(clubPath: string, folder: string, name: string): Promise<CopyFile> {
  const found = (await keptCopies(clubPath, folder)).find((copy) => copy.name === name);
  if (found) return found;
  throw new Refusal('missing', 'name', `There is no copy of the club named "${name}".`);
}

/** 2026-11-30T05-00-00-000Z, as a file may be called on every machine. */
const moment = String.raw`(\d{4}-\d\d-\d\dT\d\d)-(\d\d)-(\d\d)-(\d{3}Z)`;
const snapshotEnd = new RegExp(`^${moment}-(\\d+)\\.sqlite$`);
const replacedEnd = new RegExp(`^${moment}\\.(?:sqlite|json)$`);

async function copiesIn(folder: string, beginning: string, end: RegExp): Promise<CopyFile[]> {
  const names = await readdir(folder).catch(() => []);
  const copies = names.map(async (name): Promise<CopyFile[]> => {
    const found = name.startsWith(beginning) ? end.exec(name.slice(beginning.length)) : null;
    if (!found) return [];
    const [, hour, minute, second, rest, seq] = found;
    const takenAt = `${hour}:${minute}:${second}.${rest}`;
    const path = resolve(join(folder, name));
    // It may be removed meanwhile.
    const size = await stat(path).catch(() => null);
    if (!size?.isFile() || Number.isNaN(Date.parse(takenAt))) return [];
    const kind = seq === undefined ? 'replaced' : 'snapshot';
    return [{ name, kind, takenAt, bytes: size.size, path, seq: seq === undefined ? null : Number(seq) }];
  });
  return (await Promise.all(copies)).flat();
}
