/** An address or a port cannot be had, in one sentence. */
export class CannotListen extends Error {
  override readonly name = 'CannotListen';
}
