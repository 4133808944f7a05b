/** What is wrong in a file, where a coach finds it: the line as an editor counts it, and the column's name. */
export interface CsvProblem {
  line: number;
  /** Empty when the whole line is meant. */
  column: string;
  message: string;
}

/** So many of them are told, and beside them how many there are: more than anybody mends before looking again. */
export const MOST_TOLD = 50;
