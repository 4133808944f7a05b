import type { Problem } from '#contract/words/shapeProblem.ts';

/** A document that cannot be answered; becomes `{"error": {"field", "message"}}` on the terminal and over HTTP. */
export class InputError extends Error {
  readonly field: string;

  constructor(problem: Problem) {
    super(problem.message);
    this.name = 'InputError';
    this.field = problem.field;
  }

  get body(): { error: Problem } {
    return { error: { field: this.field, message: this.message } };
  }
}
