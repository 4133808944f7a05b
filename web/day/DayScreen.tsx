/** Day: drawn soon. */
export function DayScreen() {
  return <h1>Day</h1>;
}
