const MOST_TRIES = 12;

/**
 * Shortens a step that overshot until it ends where `miss` is zero, by Newton's rule kept inside a bracket. The step of
 * `size` has just been tried; `miss` reads its result (above 0: too far) and `slope` how fast `miss` grows with the
 * step; `retry` tries the step again with another size. Ends within `resolution` of the zero.
 */
export function landStep(
  size: number,
  resolution: number,
  retry: (size: number) => void,
  miss: () => number,
  slope: () => number,
): void {
  let low = 0;
  let high = size;
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const off = miss();
    const newton = size - off / slope();
    if (Math.abs(newton - size) <= resolution) return;
    if (off > 0) high = size;
    else low = size;
    size = newton > low && newton < high ? newton : (low + high) / 2;
    retry(size);
  }
}
