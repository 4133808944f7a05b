import { readFileSync, statSync } from 'node:fs';

/** Another process that writes to a file of SQLite, or this one. */
export type Holder = { pid: number; command: string } | 'thisProcess';

/**
 * Who holds the lock for writing on an SQLite file in a write-ahead log's mode, where the system tells it: Linux lists the locks of
 * files with process, device, inode and bytes (proc(5), "/proc/locks"). Null where it does not.
 */
export function whoHolds(path: string): Holder | null {
  if (process.platform !== 'linux') return null;
  try {
    const files = [lockOn(`${path}-shm`, writeLockByte), lockOn(path, reservedByte)];
    const held = readFileSync('/proc/locks', 'utf8')
      .split('\n')
      .map(lockOf)
      .find((lock) => lock !== null && files.some((file) => holds(lock, file)));
    if (!held) return null;
    return held.pid === process.pid ? 'thisProcess' : { pid: held.pid, command: commandOf(held.pid) };
  } catch {
    // It has ended meanwhile, or is another user's.
    return null;
  }
}

/** The byte of the shared-memory index that a writer locks (SQLite, "WAL-mode File Format", 2.3.1: WAL_WRITE_LOCK). */
const writeLockByte = 120;
/** The byte of the file that a writer locks without such a log (SQLite, "File Locking And Concurrency": RESERVED). */
const reservedByte = 0x4000_0001;

interface Lock {
  pid: number;
  file: string;
  from: number;
  to: number;
}

/** `1: POSIX  ADVISORY  WRITE 3568 fd:00:2531452 120 120`; the device in base 16, the end a number or EOF. */
function lockOf(line: string): Lock | null {
  const found = /: POSIX +\w+ +WRITE +(\d+) ([\da-f]+):([\da-f]+):(\d+) (\d+) (\d+|EOF)/.exec(line);
  if (!found) return null;
  const [, pid, major, minor, inode, from, to] = found;
  return {
    pid: Number(pid),
    file: `${Number.parseInt(major!, 16)}:${Number.parseInt(minor!, 16)}:${inode}`,
    from: Number(from),
    to: to === 'EOF' ? Number.POSITIVE_INFINITY : Number(to),
  };
}

function lockOn(path: string, byte: number): { file: string; byte: number } | null {
  const found = statSync(path, { throwIfNoEntry: false, bigint: true });
  if (!found) return null;
  // How Linux packs the two numbers of a device into one (makedev(3) of its C library).
  const major = ((found.dev >> 8n) & 0xfffn) | ((found.dev >> 32n) & ~0xfffn);
  const minor = (found.dev & 0xffn) | ((found.dev >> 12n) & ~0xffn);
  return { file: `${major}:${minor}:${found.ino}`, byte };
}

function holds({ file, from, to }: Lock, asked: ReturnType<typeof lockOn>): boolean {
  return asked !== null && file === asked.file && from <= asked.byte && asked.byte <= to;
}

/** As it was begun, as far as a sentence has room for it. */
function commandOf(pid: number): string {
  const command = readFileSync(`/proc/${pid}/cmdline`, 'utf8').replaceAll('\0', ' ').trim();
  return command.length > mostLetters ? `${command.slice(0, mostLetters)}...` : command;
}

const mostLetters = 80;
