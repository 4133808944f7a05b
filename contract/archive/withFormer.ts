import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { FormerRecord } from './formerRecord.ts';

/** The club's records, with gear that it no longer has. */
export function withFormer(records: ClubRecords, former: readonly FormerRecord[]): ClubRecords {
  const whole = { ...records };
  for (const { kind, record } of former) Object.assign(whole, { [kind]: [...whole[kind], record] });
  return whole;
}
