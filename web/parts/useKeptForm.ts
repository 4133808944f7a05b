import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import { type NewRecord, useRecords } from '#web/api/useRecords.ts';

/**
 * What the form of one record does when it ends: saves it as a new one or in the place of the one that is kept, removes that one, or
 * leaves all as it was. `called` names it beside Undo; `keptCalled` where the kept one has another name than what is typed.
 */
export function useKeptForm<K extends KindName>(
  kind: K,
  form: {
    record: NewRecord<K> & Omit<RecordOf<K>, 'id'>;
    kept: { id: string } | null;
    called: string;
    keptCalled?: string;
    onLeave: () => void;
  },
): { onSave: () => Promise<void>; onLeave: () => void; onRemove: (() => void) | undefined } {
  const { record, kept, called, keptCalled = called, onLeave } = form;
  const records = useRecords(kind);
  const onSave = async () => {
    await (kept
      ? records.update({ ...record, id: kept.id } as unknown as RecordOf<K>, called)
      : records.create(record, called));
    onLeave();
  };
  const remove = ({ id }: { id: string }) => {
    onLeave();
    void records.remove(id, keptCalled);
  };
  return { onSave, onLeave, onRemove: kept ? () => remove(kept) : undefined };
}
