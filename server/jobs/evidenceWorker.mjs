/** Entry of the thread that weighs the log: TypeScript made readable first, then the work, which is contract's. */
import { register } from 'tsx/esm/api';

register();
const { clubEvidence } = await import('#reckon/evidence/clubEvidence.ts');

export default function weigh({ records, sets }) {
  return clubEvidence(records, sets);
}
