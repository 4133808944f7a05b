import type { WrittenLoad } from './RackSheetModel.ts';

/** What share of what can be held at that height a load is: "87 % of strength there"; empty where it was not worked out. */
export function strengthThere({ share }: Pick<WrittenLoad, 'share'>): string {
  return share && `${share} of strength there`;
}
