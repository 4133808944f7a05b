/** Entry of the thread that takes files of sets in: TypeScript made readable first, then the work, on the club's file. */
import { register } from 'tsx/esm/api';

register();
const { openClubStore } = await import('#store/openClubStore.ts');
const { Refusal } = await import('#store/Refusal.ts');
const { importLog } = await import('./importLog.ts');

/** Errors lose their class on the way between threads, so what is refused goes back as a value. */
export default async function take({ path, asked }) {
  const store = await openClubStore(path);
  try {
    return { imported: await importLog(store, asked) };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const { reason, field, message } = error;
    return { refused: { reason, field, message } };
  } finally {
    await store.close();
  }
}
