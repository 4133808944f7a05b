import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { z } from 'zod';
import type { allKinds, KindName, RecordOf } from '#contract/records/allKinds.ts';
import { useClashAsked } from '#web/parts/ClashAsked.tsx';
import { useToast } from '#web/parts/Toast.tsx';
import { changeRecord } from './changeRecord.ts';
import { refreshClub } from './refreshClub.ts';
import { request } from './request.ts';
import { useFoundRecords } from './useFoundRecords.ts';
import { useUndo } from './useUndo.ts';

/** What a form sends for a new record: everything but the id; fields with a default may be left out. */
export type NewRecord<K extends KindName> = Omit<z.input<(typeof allKinds)[K]['shape']>, 'id'>;

/** What the server answers to a change; `seq` names the change for Undo. */
interface Changed<K extends KindName> {
  record: RecordOf<K>;
  seq: number;
}

/** Writes records of one kind. Each way resolves when every screen shows the record as it is now, or rejects with a `RequestError`. */
export interface RecordWriter<K extends KindName> {
  create: (record: NewRecord<K>, called?: string) => Promise<RecordOf<K>>;
  /**
   * With `called` it offers Undo: "Changed Wide 3." What others changed since `found` stays, and where that is the same field the coach
   * is asked. Left out, `found` is the record as it was when this writer was first there, as is right for a form.
   */
  update: (record: RecordOf<K>, called?: string, found?: RecordOf<K>) => Promise<RecordOf<K>>;
  /** Removes it and offers Undo: "Removed Wide 3." */
  remove: (id: string, called: string) => Promise<void>;
  busy: boolean;
}

/** The writer of one kind of record. */
export function useRecords<K extends KindName>(kind: K): RecordWriter<K> {
  const client = useQueryClient();
  const say = useToast();
  const undo = useUndo();
  const ask = useClashAsked();
  const foundHere = useFoundRecords(kind);
  const refresh = () => refreshClub(client);
  const path = `/api/records/${kind}`;

  const create = useMutation({
    mutationFn: (record: NewRecord<K>) => request<Changed<K>>('POST', path, record),
    onSuccess: refresh,
  });
  const update = useMutation({
    mutationFn: (change: { found: RecordOf<K>; wanted: RecordOf<K> }) =>
      changeRecord<Changed<K>>(kind, change, ask),
    onSuccess: refresh,
  });
  const remove = useMutation({
    mutationFn: ({ id }: { id: string; called: string }) =>
      request<{ seq: number }>('DELETE', `${path}/${encodeURIComponent(id)}`),
    onSuccess: async ({ seq }, { called }) => {
      await refresh();
      say(`Removed ${called}.`, () => undo(seq));
    },
    onError: (error) => say(error.message),
  });

  const saidWithUndo = (done: string, called: string | undefined, { record, seq }: Changed<K>) => {
    if (called !== undefined) say(`${done} ${called}.`, () => undo(seq));
    return record;
  };
  return {
    create: async (record, called) => saidWithUndo('Added', called, await create.mutateAsync(record)),
    update: async (wanted, called, found = foundHere(wanted.id)) =>
      saidWithUndo('Changed', called, await update.mutateAsync({ found, wanted })),
    remove: async (id, called) => {
      await remove.mutateAsync({ id, called }).catch(() => {});
    },
    busy: create.isPending || update.isPending || remove.isPending,
  };
}
