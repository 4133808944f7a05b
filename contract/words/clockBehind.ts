/**
 * What is told where the clock stands before the last change of the club, of which `madeAt` is the moment; null: it does not. A clock that was put right
 * by seconds is none.
 */
export function clockBehind(madeAt: string | null, now: Date): string | null {
  if (madeAt === null || Date.parse(madeAt) - now.getTime() <= aMinuteMs) return null;
  return `The clock of this computer says ${spelt(now.toISOString())}, but the last change to the club was made at ${spelt(madeAt)}: set the clock right, since days and sets would get a wrong date. Nothing that was saved is lost. Until the clock has passed that moment, new changes are dated on from there, in their order.`;
}

const aMinuteMs = 60_000;

function spelt(moment: string): string {
  return `${moment.slice(0, '2026-11-30T05:40'.length).replace('T', ' ')} UTC`;
}
