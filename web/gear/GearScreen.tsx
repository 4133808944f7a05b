/** Gear: drawn soon. */
export function GearScreen() {
  return <h1>Gear</h1>;
}
