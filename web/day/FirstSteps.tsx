import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { useClub } from '#web/api/useClub.ts';
import { EmptyState } from '#web/parts/EmptyState.tsx';
import { firstSteps } from './firstSteps.ts';

/** Before the first day: what the club still needs, each with the way there, and what is done already. */
export function FirstSteps({ action }: { action: ReactNode }) {
  const steps = firstSteps(useClub());
  return (
    <EmptyState
      title="The first training day"
      steps={[
        ...steps.map(({ word, href, says, done }) => (
          <>
            <Link href={href}>{word}</Link>: {done ? <strong>done.</strong> : says}
          </>
        )),
        'A day: what it is for, who lifts where. Then have the loads worked out and print the sheet for the wall.',
      ]}
      action={action}
    />
  );
}
