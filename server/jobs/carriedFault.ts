import { CannotAssemble } from '#reckon/gear/CannotAssemble.ts';
import { Refusal, type RefusalReason } from '#store/Refusal.ts';

/** What a coach is to read of a fault: errors lose their class on the way between threads, so that it goes over as a value. */
export type CarriedFault =
  | { refused: { reason: RefusalReason; field: string; message: string } }
  | { cannotAssemble: string };

/** Null for a fault of the program. */
export function carriedFault(error: unknown): CarriedFault | null {
  if (error instanceof CannotAssemble) return { cannotAssemble: error.message };
  if (!(error instanceof Refusal)) return null;
  const { reason, field, message } = error;
  return { refused: { reason, field, message } };
}

export function faultOf(carried: CarriedFault): Error {
  if ('cannotAssemble' in carried) return new CannotAssemble(carried.cannotAssemble);
  const { reason, field, message } = carried.refused;
  return new Refusal(reason, field, message);
}
