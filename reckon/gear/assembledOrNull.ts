import { CannotAssemble } from './CannotAssemble.ts';

/** What is assembled; null where the club's records no longer tell, or tell too little. Any other fault stays one. */
export function assembledOrNull<Made>(assemble: () => Made): Made | null {
  try {
    return assemble();
  } catch (error) {
    if (error instanceof CannotAssemble) return null;
    throw error;
  }
}
