import type { Who } from '#contract/changes/who.ts';

/** Somebody at work in one club. */
export interface Writer {
  clubId: string;
  who: Who;
}
