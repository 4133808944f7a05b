import { setTimeout as pause } from 'node:timers/promises';

/** Everybody's strength is worked out behind the first start; that is measured elsewhere. */
export async function untilWeighed(url: string): Promise<void> {
  for (let quiet = 0; quiet < 3; ) {
    await pause(1000);
    const answer = await fetch(`${url}/api/estimates/all`);
    const { progress } = (await answer.json()) as { progress: { running: boolean } };
    quiet = progress.running ? 0 : quiet + 1;
  }
}
