import { useRef, useState } from 'react';
import { changed, type DraftSteps, takenBack } from './draftSteps.ts';

/** A document as it is being changed, and the way back step by step. What is typed in one field is one step. */
export function useDraft<Document>(first: Document) {
  const [steps, setSteps] = useState<DraftSteps<Document>>({ draft: first, past: [] });
  const [turns, setTurns] = useState(0);
  const typedIn = useRef<Element | null>(null);
  const change = (next: Document) => {
    const { activeElement } = document;
    const field = activeElement?.matches('textarea, input:not([type=checkbox], [type=radio])')
      ? activeElement
      : null;
    const goesOn = field !== null && field === typedIn.current;
    typedIn.current = field;
    setSteps((now) => changed(now, next, goesOn));
  };
  const takeBack = () => {
    typedIn.current = null;
    setSteps(takenBack);
    setTurns(turns + 1);
  };
  return {
    draft: steps.draft,
    change,
    /** Null: nothing was changed. */
    takeBack: steps.past.length === 0 ? null : takeBack,
    /** How often a step was taken back: what fields hold of it is out of date. */
    turns,
  };
}
