/** Lifters: drawn soon. */
export function LiftersScreen() {
  return <h1>Lifters</h1>;
}
