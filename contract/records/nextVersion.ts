import type { Method } from './method.ts';
import type { KeptMethod } from './season.ts';

/** The version that a changed or read method gets: its own where the club has none so high yet, else one more than the highest. */
export function nextVersion(
  kept: readonly Pick<KeptMethod, 'methodDocument'>[],
  { id, version }: Pick<Method, 'id' | 'version'>,
): number {
  const versions = kept.flatMap(({ methodDocument: one }) => (one.id === id ? [one.version] : []));
  return Math.max(version, ...versions.map((one) => one + 1));
}
