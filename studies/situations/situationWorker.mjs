/** Entry of the threads of the study of situations: TypeScript made readable first, then one lifter a call. */
import { register } from 'tsx/esm/api';

register();
const { situationOne } = await import('./situationOne.ts');

export default function study(asked) {
  return situationOne(asked);
}
