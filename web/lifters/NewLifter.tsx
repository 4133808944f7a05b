import { useLocation } from 'wouter';
import { useRecords } from '#web/api/useRecords.ts';
import { LifterForm } from './LifterForm.tsx';

/** Adds a lifter and opens their page. */
export function NewLifter() {
  const lifters = useRecords('lifter');
  const [, navigate] = useLocation();
  return (
    <LifterForm
      title="Add a lifter"
      initial={{
        name: '',
        bornOn: null,
        category: 'women',
        statureM: null,
        equipment: 'raw',
        leftOn: null,
        note: '',
      }}
      onSave={async (draft) => navigate(`/${(await lifters.create(draft)).id}`)}
      onLeave={() => navigate('/')}
    />
  );
}
