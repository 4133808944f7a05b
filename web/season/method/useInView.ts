import { type RefObject, useEffect, useState } from 'react';
import type { Method } from '#contract/records/method.ts';
import type { MethodProblem } from '#contract/season/readMethod.ts';
import { shownBy } from './shownBy.ts';
import { untakenField } from './untakenField.ts';

export type InView = ReturnType<typeof useInView>;

/** Which phase, day and groups of a method are in view, and the way to a field that is not. Nobody is led away from a text that was not taken. */
export function useInView(
  draft: Method,
  problems: readonly MethodProblem[],
  form: RefObject<HTMLElement | null>,
) {
  const [phaseId, setPhaseId] = useState(draft.phases[0]!.id);
  const [day, setDay] = useState(0);
  const [open, setOpen] = useState<ReadonlySet<string>>(new Set());
  // A new object for each click: the same place may be sought twice.
  const [sought, setSought] = useState<{ place: string } | null>(null);
  useEffect(() => {
    if (sought !== null) document.getElementById(sought.place)?.focus();
  }, [sought]);
  const at = draft.phases.findIndex(({ id }) => id === phaseId);
  const leave = (go: () => void) => {
    const untaken = form.current && untakenField(form.current, problems);
    if (untaken) untaken.focus();
    else go();
  };
  const showPhase = (id: string) => {
    if (id === phaseId) return;
    setPhaseId(id);
    setDay(0);
  };
  return {
    /** A step taken back may take the phase in view with it. */
    at: Math.max(0, at),
    day,
    open,
    showPhase,
    showDay: setDay,
    leave,
    setGroupOpen: (group: string, isOpen: boolean) =>
      setOpen(new Set(isOpen ? [...open, group] : [...open].filter((one) => one !== group))),
    lead: ({ place }: MethodProblem) =>
      leave(() => {
        const shown = shownBy(draft, place);
        if (shown.phaseId !== null) showPhase(shown.phaseId);
        if (shown.day !== null) setDay(shown.day);
        if (shown.groupId !== null) setOpen(new Set([...open, shown.groupId]));
        setSought({ place });
      }),
  };
}
