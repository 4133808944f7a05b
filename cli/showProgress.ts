import type { StrengthEstimator } from '#server/strength/strengthEstimator.ts';

/** One line that is written over, where somebody sees it; a file gets none. Until the returned function is called. */
export function showProgress({ progress }: Pick<StrengthEstimator, 'progress'>): () => void {
  if (!process.stderr.isTTY) return () => {};
  const write = () => {
    const { done, total } = progress();
    process.stderr.write(`\rEstimating: ${done} of ${total} `);
  };
  const timer = setInterval(write, 250);
  return () => {
    clearInterval(timer);
    process.stderr.write('\r\u001b[K');
  };
}
