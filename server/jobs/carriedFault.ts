import { CannotAssemble } from '#reckon/gear/CannotAssemble.ts';
import { Refusal, type RefusalReason } from '#store/Refusal.ts';

/** A fault as a value: errors lose their class on the way between threads, and those of the database what they say. */
export type CarriedFault =
  | { refused: { reason: RefusalReason; field: string; message: string } }
  | { cannotAssemble: string }
  /** A fault of the program: what it says and where it comes from. */
  | { failed: { message: string; stack: string } };

export function carriedFault(error: unknown): CarriedFault {
  if (error instanceof CannotAssemble) return { cannotAssemble: error.message };
  if (error instanceof Refusal) {
    const { reason, field, message } = error;
    return { refused: { reason, field, message } };
  }
  if (error instanceof Error) return { failed: { message: error.message, stack: error.stack ?? '' } };
  return { failed: { message: String(error), stack: '' } };
}

/** `job`: what a fault of the program is told of. */
export function faultOf(carried: CarriedFault, job: string): Error {
  if ('cannotAssemble' in carried) return new CannotAssemble(carried.cannotAssemble);
  if ('refused' in carried) {
    const { reason, field, message } = carried.refused;
    return new Refusal(reason, field, message);
  }
  const { message, stack } = carried.failed;
  return new Error(`${job} failed in its thread: ${message}`, { cause: stack });
}
