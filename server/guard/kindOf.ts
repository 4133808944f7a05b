import { allKinds, type KindName } from '#contract/records/allKinds.ts';
import { Refusal } from '#store/Refusal.ts';

/** The kind that a path names, or 404. */
export function kindOf(name: string): KindName {
  if (Object.hasOwn(allKinds, name)) return name as KindName;
  throw new Refusal('missing', 'kind', `There is no kind of record called "${name}".`);
}
