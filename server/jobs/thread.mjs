/** Entry of every thread: TypeScript made readable first, then whatever job it is asked for. */
import { register } from 'tsx/esm/api';

register();
const { runInThread } = await import('./runInThread.ts');
export default runInThread;
