import { Refusal } from './Refusal.ts';

/** Reads what was written as JSON. What is none was damaged on the disk: pages can be sound though what stands in them is not. */
export function parseKept(written: string): unknown {
  try {
    return JSON.parse(written);
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    const sentence =
      'What stands in the club\'s file is damaged and cannot be read as it was written. Nothing was changed; end the program and put a good copy in the file\'s place: "rackwright snapshot --list" names those that are kept, "rackwright restore" restores one.';
    throw new Refusal('unavailable', '', sentence);
  }
}
