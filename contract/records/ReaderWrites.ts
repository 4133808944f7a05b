/** How the reader of a sentence writes lengths (m) and dates (2026-11-25); what is left out stands as the sentence has it. */
export interface ReaderWrites {
  lengthText?: (lengthM: number) => string;
  dateText?: (date: string) => string;
}
