/**
 * Does a work whenever it is asked for, never two at a time: what is asked for while it is under way is done once more after it, however
 * often it was asked. One that was begun comes to its end, even where it is asked for faster than it is done.
 */
export function oneAtATime(work: () => Promise<void>): () => void {
  let isRunning = false;
  let isDue = false;
  async function run(): Promise<void> {
    isRunning = true;
    while (isDue) {
      isDue = false;
      // Whoever looks sees what failed where it is shown.
      await work().catch(() => {});
    }
    isRunning = false;
  }
  return () => {
    isDue = true;
    if (!isRunning) void run();
  };
}
