/** A document as it is being changed, and what it was before each step, oldest first. */
export interface DraftSteps<Document> {
  draft: Document;
  past: readonly Document[];
}

/** Changed to `next`; `goesOn`: still the step that was begun last, as letter after letter in one field. */
export function changed<Document>(
  { draft, past }: DraftSteps<Document>,
  next: Document,
  goesOn: boolean,
): DraftSteps<Document> {
  return { draft: next, past: goesOn ? past : [...past, draft] };
}

/** One step back; as it was where nothing was changed. */
export function takenBack<Document>(steps: DraftSteps<Document>): DraftSteps<Document> {
  const before = steps.past.at(-1);
  return before === undefined ? steps : { draft: before, past: steps.past.slice(0, -1) };
}
