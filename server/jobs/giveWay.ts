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

/** The last of twenty steps, each of which leaves others a quarter more: with two processors busy a logged set waited half as long as at the tenth. */
const niceness = 19;
