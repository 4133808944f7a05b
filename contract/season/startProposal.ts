import type { EffectRange } from '#contract/evidence/evidenceReport.ts';
import type { Start } from '#contract/records/lift.ts';
import type { Variant } from '#contract/records/method.ts';

/** One start of a group that is rotated through, as it stands for one lifter before a day. */
export interface StartKnown {
  variant: Variant;
  /** The same as this lifter does it. */
  start: Start;
  /** The last day on which the log has such work from it; null: none. */
  lastDoneOn: string | null;
  /** It has rested as long as the method says by then, by plan and log, and does not come again too soon afterwards. */
  hasRested: boolean;
  /** What a kg gained with it was worth on the platform, by the lifter's own meets, else by the club's; null: too few to say. */
  carriedOver: (EffectRange & { whose: 'lifter' | 'club' }) | null;
}

/** What speaks for a start. */
export type StartReason =
  | { code: 'due'; lastDoneOn: string | null }
  | { code: 'carriedOver'; value: number; low80: number; high80: number; whose: 'lifter' | 'club' }
  | { code: 'misses'; count: number; atS: number };

export interface StartProposal {
  starts: StartKnown[];
  /** Null: none has rested. */
  proposed: { variant: Variant; start: Start; reasons: StartReason[] } | null;
}
