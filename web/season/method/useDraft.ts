import { useEffect, useRef, useState } from 'react';
import type { Method } from '#contract/records/method.ts';
import { changed, takenBack } from './draftSteps.ts';
import { openDraft, setOpenDraft } from './openDrafts.ts';

/** A method as it is being changed on a page, and the way back step by step. What is typed in one field is one step. Begun before, it goes on. */
export function useDraft(page: string, first: Method) {
  const [steps, setSteps] = useState(openDraft(page)?.steps ?? { draft: first, past: [] });
  useEffect(() => setOpenDraft(page, { first, steps }), [page, first, steps]);
  const [turns, setTurns] = useState(0);
  const typedIn = useRef<Element | null>(null);
  const change = (next: Method) => {
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
