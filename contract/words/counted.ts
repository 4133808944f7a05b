/** So many of a thing, in one or several: "1 lift", "3 lifts", "2 hard lifts off a box". */
export function counted(count: number, one: string, several = `${one}s`): string {
  return `${count} ${count === 1 ? one : several}`;
}
