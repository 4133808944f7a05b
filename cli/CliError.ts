/** Ends a command with one line on standard error: 1 when something failed, 2 when the request is not understood. */
export class CliError extends Error {
  readonly exitCode: 1 | 2;

  constructor(message: string, exitCode: 1 | 2 = 1) {
    super(message);
    this.name = 'CliError';
    this.exitCode = exitCode;
  }
}
