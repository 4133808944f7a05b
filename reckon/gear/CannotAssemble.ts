/** What a calculation needs is not in the club's records; the message is one sentence for the coach. */
export class CannotAssemble extends Error {
  override readonly name = 'CannotAssemble';
}
