/** Entry of the thread that takes files of sets in: TypeScript made readable first, then the work, on the club's file. */
import { register } from 'tsx/esm/api';

register();
const { openStore } = await import('#store/openStore.ts');
const { Refusal } = await import('#store/Refusal.ts');
const { importLog } = await import('./importLog.ts');

/** Errors lose their class on the way between threads, so what is refused goes back as a value. */
export default async function take({ path, clubId, who, asked }) {
  const house = await openStore(path);
  try {
    const store = await house.forClub(clubId, who);
    return { imported: await importLog(store, asked) };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const { reason, field, message } = error;
    return { refused: { reason, field, message } };
  } finally {
    await house.close();
  }
}
