/** The address of a part of a lifter's page within the lifters' screen; the bare one opens on today. */
export function partAddress(lifterId: string, partId: string): string {
  return partId === 'today' ? `/${lifterId}` : `/${lifterId}/${partId}`;
}
