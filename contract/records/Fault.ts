/** What cannot be in a record: the field, empty where none is to blame, and one sentence with its value and what is allowed. */
export interface Fault {
  field: string;
  message: string;
  /** It could be by itself, but not beside what the club has. */
  isClash?: true;
}
