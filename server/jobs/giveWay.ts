import { readlinkSync } from 'node:fs';
import { setPriority } from 'node:os';
import { basename } from 'node:path';

/**
 * Lets this thread work only where the thread that answers leaves the processor. Linux alone ranks threads one by one (setpriority(2));
 * elsewhere the whole program would give way to others, so that nothing is done there.
 */
export function giveWay(): void {
  if (process.platform !== 'linux') return;
  try {
    setPriority(Number(basename(readlinkSync('/proc/thread-self'))), niceness);
  } catch {
    // Somebody forbids it: then threads share the processor as everything does.
  }
}

/** From 0, as everything begins, to 19; each step leaves others a quarter more. */
const niceness = 10;
