import { useLocation } from 'wouter';
import { useRecords } from '#web/api/useRecords.ts';
import { LifterForm } from './LifterForm.tsx';

/** Adds a lifter and opens their page. */
export function NewLifter() {
  const lifters = useRecords('lifter');
  const [, navigate] = useLocation();
  return (
    <div className="stack loose">
      <h1>Add a lifter</h1>
      <LifterForm
        title="Who it is"
        lifter={null}
        onSave={async (draft) => navigate(`/${(await lifters.create(draft)).id}`)}
        onLeave={() => navigate('/')}
      />
    </div>
  );
}
