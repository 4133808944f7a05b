/** A length whatever its unit was: as a multiple of the loop at rest. */
export function timesRest(lengthM: number, restLengthM: number): string {
  return `${(lengthM / restLengthM).toFixed(2)} times its rest length`;
}
