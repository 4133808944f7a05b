import SqliteFile from 'better-sqlite3';
import { refuseOther } from './ownFile.ts';

/**
 * Takes what stands in the write-ahead log of a club's file over into the file, so that the log begins anew with the next write; `mark`
 * tells which file that is. Nobody waits for it who reads or writes meanwhile (SQLite's documentation, "wal_checkpoint", PASSIVE). To be
 * called where nobody waits: it stands still until it is done. What is written meanwhile is taken over too, as far as that ends soon.
 */
export function emptyLog(path: string, mark: string | null): void {
  refuseOther(path, mark);
  const file = new SqliteFile(path, { fileMustExist: true, timeout: 0 });
  try {
    for (let times = 0; times < mostTimes; times += 1) {
      const [took] = file.pragma('wal_checkpoint(PASSIVE)') as { log: number; checkpointed: number }[];
      if (took!.checkpointed === took!.log) return;
    }
  } finally {
    file.close();
  }
}

/** Each time less was written meanwhile. */
const mostTimes = 10;
