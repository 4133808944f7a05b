import { useQueryClient } from '@tanstack/react-query';
import { createContext, type ReactNode, use, useCallback, useState } from 'react';
import type { ClubState } from '#contract/changes/clubState.ts';
import type { AskClash } from '#web/api/changeRecord.ts';
import { clubKey } from '#web/api/useClub.ts';
import type { Question } from './ClashQuestion.tsx';
import { comesLater } from './comesLater.ts';

/** Two people seldom change the same. */
const ClashQuestion = comesLater(() => import('./ClashQuestion.tsx').then((m) => m.ClashQuestion));

const ClashContext = createContext<AskClash>(async () => null);

/** Asks, one question after another, what is to stand where two people changed the same. What either typed is still there meanwhile. */
export function ClashAsked({ children }: { children: ReactNode }) {
  const client = useQueryClient();
  const [questions, setQuestions] = useState<readonly Question[]>([]);
  const ask = useCallback<AskClash>(
    (kind, clash) =>
      new Promise((resolve) => {
        const question: Question = {
          kind,
          clash,
          answer(answer) {
            setQuestions((all) => all.filter((one) => one !== question));
            resolve(answer);
          },
        };
        setQuestions((all) => [...all, question]);
      }),
    [],
  );
  const [first] = questions;
  return (
    <ClashContext value={ask}>
      {children}
      {first && <ClashQuestion {...first} club={client.getQueryData<ClubState>(clubKey)?.records} />}
    </ClashContext>
  );
}

/** The way to ask from anywhere on a screen. */
export function useClashAsked(): AskClash {
  return use(ClashContext);
}
