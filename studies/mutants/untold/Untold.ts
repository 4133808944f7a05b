/** Changes of one expression that no answer can show, each written as `from -> to`. */
export interface Untold {
  file: string;
  /** Stands once in the file, and the changes lie in it. */
  within: string;
  changes: readonly string[];
  /** A sentence that the next one can doubt. */
  why: string;
}
