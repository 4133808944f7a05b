import { useState } from 'react';
import { allKinds, type KindName, type RecordOf } from '#contract/records/allKinds.ts';
import { dateText } from '#contract/words/dateText.ts';
import { type FormLabels, formFaults, isEmpty } from '#contract/words/formFaults.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { fieldIn, figureLimits, quantityLimits, textLimits } from './limits.ts';
import { localToday } from './localToday.ts';
import { useUnits } from './ViewUnits.tsx';

type Name<K extends KindName> = Exclude<keyof RecordOf<K>, 'id'> & string;

/** What the fields of a form show of one draft: labels, what is allowed by the shape of the kind, and what is wrong by its judge. */
export interface RecordFields<K extends KindName> {
  /** For a choice, or a part with fields of its own. */
  choice: (name: Name<K>) => { label: string; error: string | null };
  /** For a text or a date. */
  text: (name: Name<K>) => { label: string; error: string | null } & ReturnType<typeof textLimits> & {
      /** Given where the field itself says that the day is still to come. */
      today: string | undefined;
    };
  /** For a quantity with a unit. */
  quantity: (name: Name<K>) => { label: string; error: string | null } & ReturnType<typeof quantityLimits>;
  /** For a plain figure. */
  figure: (name: Name<K>) => { label: string } & ReturnType<typeof figureLimits>;
  /** What no field of the form shows beside itself; null: nothing. */
  wrong: string | null;
}

/**
 * The fields of a form for one kind of record, `before` null for a new one. They are judged as files, archives and the store
 * judge them, in the labels and units of the form. A fault at a field that is still empty is said by the form as a whole, once
 * somebody wants to save.
 */
export function useRecordFields<K extends KindName>(
  kind: K,
  draft: { [F in Name<K>]: unknown },
  before: RecordOf<K> | null,
  labels: FormLabels<K>,
): RecordFields<K> {
  const now = useClub();
  // What this form itself has just saved is no other record that it could clash with.
  const [others] = useState(() => new Set(now[kind].map(({ id }) => id)));
  const ofKind: readonly { id: string }[] = now[kind];
  const club = { ...now, [kind]: ofKind.filter(({ id }) => others.has(id)) };
  const { length } = useUnits();
  const today = localToday(useClubSettings().timeZone);
  const writes = { dateText, lengthText: (metres: number) => formatQuantity(metres, length) };
  const faults = formFaults(kind, draft, before, { club, today, labels, writes });
  /** Its field shows the fault, and the form is not saved while it does. */
  const isTyped = (name: string) => name in labels && !isEmpty(Reflect.get(draft, name));
  const isList = (name: string) => Array.isArray(Reflect.get(draft, name));
  const about = (name: Name<K>) => ({
    label: Reflect.get(labels, name) as string,
    error: faults.find(({ field }) => field === name && (isTyped(name) || isList(name)))?.message ?? null,
  });
  const { date } = allKinds[kind].facts;
  const isPast = (name: string) => date !== null && date.isPast && date.field === name;
  const shapeOf = (name: string) => fieldIn(allKinds[kind].shape.shape, name);
  return {
    choice: about,
    text: (name) => ({
      ...about(name),
      ...textLimits(shapeOf(name)),
      ...(isPast(name) ? { today, error: null } : { today: undefined }),
    }),
    quantity: (name) => ({ ...about(name), ...quantityLimits(shapeOf(name)) }),
    figure: (name) => ({ label: about(name).label, ...figureLimits(shapeOf(name)) }),
    wrong: faults.find(({ field }) => !isTyped(field))?.message ?? null,
  };
}
