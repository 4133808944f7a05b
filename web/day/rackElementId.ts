/** Where a group's table of one rack stands on the page. */
export function rackElementId(groupId: string, rackId: string): string {
  return `rack-${groupId}-${rackId}`;
}
