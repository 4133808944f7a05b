/** Entry of the thread that solves training days: TypeScript made readable first, then the work, which is contract's. */
import { register } from 'tsx/esm/api';

register();
const { CannotAssemble } = await import('#reckon/gear/CannotAssemble.ts');
const byLog = await import('#reckon/day/planByLog.ts');
const { solveDay } = await import('#reckon/day/solveDay.ts');

/** Errors lose their class on the way between threads, so what the club's records miss goes back as a value. */
export default function solve({ records, day, estimates, awaited }) {
  try {
    return { plan: solveDay(records, day, estimates, awaited) };
  } catch (error) {
    if (error instanceof CannotAssemble) return { missing: error.message };
    throw error;
  }
}

export function planByLog({ records, day, plan, estimates }) {
  return byLog.planByLog(records, day, plan, estimates);
}
