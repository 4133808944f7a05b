import type { RecordClash } from '#contract/changes/RecordClash.ts';

/** Why the store did not do what it was asked: the request is wrong, its subject is not there, something stands against it, or the file cannot be written. */
export type RefusalReason = 'invalid' | 'missing' | 'conflict' | 'unavailable';

/** A request that the store refuses with one sentence for the coach; nothing was changed. */
export class Refusal extends Error {
  readonly reason: RefusalReason;
  /** The field the sentence is about; empty where it is about the whole. */
  readonly field: string;

  constructor(reason: RefusalReason, field: string, message: string) {
    super(message);
    this.name = 'Refusal';
    this.reason = reason;
    this.field = field;
  }
}

/** A change of what somebody else changed meanwhile. */
export class ClashRefusal extends Refusal {
  readonly clash: RecordClash;

  constructor(field: string, message: string, clash: RecordClash) {
    super('conflict', field, message);
    this.clash = clash;
  }
}
