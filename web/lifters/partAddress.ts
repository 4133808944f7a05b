import type { LoggedSet } from '#contract/records/loggedSet.ts';

/** The address of a part of a lifter's page within the lifters' screen; the bare one opens on today. */
export function partAddress(lifterId: string, partId: string): string {
  return partId === 'today' ? `/${lifterId}` : `/${lifterId}/${partId}`;
}

/** Where a set's exact setup is followed over the weeks; any set with that setup leads to the same. */
export function overWeeksAddress({ id, lifterId }: Pick<LoggedSet, 'id' | 'lifterId'>): string {
  return `${partAddress(lifterId, 'weeks')}?${new URLSearchParams({ set: id })}`;
}
