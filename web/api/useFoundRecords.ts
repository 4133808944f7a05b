import { useState } from 'react';
import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import { RequestError } from './request.ts';
import { useRecordsNow } from './useRecordsNow.ts';

/** The records of a kind as they were when a screen or a form was first there. */
export function useFoundRecords<K extends KindName>(kind: K): (id: string) => RecordOf<K> {
  const now = useRecordsNow(kind);
  const [found] = useState(() => new Map(now().map((record) => [record.id, record])));
  return (id) => {
    // One that came since was found as it now is.
    const record = found.get(id) ?? now().find((one) => one.id === id);
    if (record) return record;
    throw new RequestError(0, 'This is no longer there; somebody removed it meanwhile.', null);
  };
}
