import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import type { FormLabels } from '#contract/words/formFaults.ts';
import { type NewRecord, useRecords } from '#web/api/useRecords.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { FindFields } from '#web/parts/FindFields.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { asTheyCome, useFound } from '#web/parts/useFound.ts';
import { useRecordFields } from '#web/parts/useRecordFields.ts';
import { CsvDoor } from './CsvDoor.tsx';
import { type Draft, onlyWhatMatters, type TableField } from './TableField.ts';
import { TableFieldInput } from './TableFieldInput.tsx';

/** One kind of gear as a coach keeps it: a table, and beside it a form for the row that is open. */
export interface KindTable<K extends KindName> {
  kind: K;
  /** "bars" and "bar". */
  title: string;
  many: string;
  one: string;
  /** One sentence that teaches, shown while there is none. */
  teaches: string;
  nameOf: (record: RecordOf<K> | Draft<K>) => string;
  fields: readonly TableField<K>[];
  blank: Draft<K>;
  /** What a new one is called by the rest of its fields, as long as nobody typed another label. */
  suggestedLabel?: (draft: Draft<K>) => string;
}

export function RecordTable<K extends KindName>(props: {
  table: KindTable<K>;
  rows: readonly RecordOf<K>[];
  columns: readonly Column<RecordOf<K>>[];
  /** Drawn beside the form, live. */
  picture?: (draft: Draft<K> | null, openId: string | null) => ReactNode;
  heading?: 'h1' | 'h2';
}) {
  const { table, rows, columns, picture } = props;
  const [open, setOpen] = useState<{ id: string | null; draft: Draft<K> } | null>(null);
  /** How many were added in a row: each has a form of its own. */
  const [added, setAdded] = useState(0);
  const found = useFound(
    rows,
    (record) => [table.nameOf(record), String(Reflect.get(record, 'note') ?? '')],
    [asTheyCome],
    table.kind,
  );
  const Heading = props.heading ?? 'h2';
  const place = useRef<HTMLElement>(null);
  const cameFrom = useRef<Element | null>(null);
  const close = () => {
    setOpen(null);
    setAdded(0);
    if (cameFrom.current instanceof HTMLElement) cameFrom.current.focus();
    cameFrom.current = null;
  };
  const openNew = () => setOpen({ id: null, draft: withSuggested(table, table.blank, table.blank) });
  const openKey = open && (open.id ?? `new ${added}`);
  useEffect(() => {
    if (openKey === null) return;
    cameFrom.current ??= document.activeElement;
    place.current?.querySelector<HTMLElement>('form input, form select')?.focus();
  }, [openKey]);
  const openRow = (record: RecordOf<K>) => {
    const { id, ...draft } = record;
    setOpen({ id, draft: draft as unknown as Draft<K> });
  };
  return (
    <section className="record-table stack" ref={place}>
      <div className="row base">
        <Heading>{table.title}</Heading>
        <button type="button" onClick={openNew}>
          Add a {table.one}
        </button>
      </div>
      <FindFields found={found} label="Label or note" />
      <div className={open ? 'record-table-open' : ''}>
        {open && (
          <TableForm
            key={openKey}
            table={table}
            id={open.id}
            draft={open.draft}
            before={rows.find(({ id }) => id === open.id) ?? null}
            onChange={(draft) =>
              setOpen({ ...open, draft: open.id === null ? withSuggested(table, draft, open.draft) : draft })
            }
            onLeave={close}
            onNext={() => {
              setAdded(added + 1);
              openNew();
            }}
          />
        )}
        <div className={picture ? 'with-picture' : ''}>
          {picture?.(open?.draft ?? null, open?.id ?? null)}
          {rows.length === 0 ? (
            <p className="quiet">{table.teaches}</p>
          ) : (
            <DataTable
              label={table.title}
              columns={columns}
              rows={found.rows}
              keyOf={({ id }) => id}
              nameOf={table.nameOf}
              onOpen={openRow}
              onLeave={close}
              selectedKey={open?.id}
            />
          )}
        </div>
      </div>
      <CsvDoor kind={table.kind} />
    </section>
  );
}

/** The draft with the label that follows from it, where the one it has followed from the draft before. */
function withSuggested<K extends KindName>(
  { suggestedLabel }: KindTable<K>,
  draft: Draft<K>,
  before: Draft<K>,
): Draft<K> {
  const label: unknown = Reflect.get(draft, 'label');
  if (suggestedLabel === undefined || (label !== '' && label !== suggestedLabel(before))) return draft;
  // Emptied by hand: somebody is about to type another.
  if (label === '' && Reflect.get(before, 'label') !== '') return draft;
  return { ...draft, label: suggestedLabel(draft) };
}

/** The form for one row. */
function TableForm<K extends KindName>(props: {
  table: KindTable<K>;
  /** Null: a new one. */
  id: string | null;
  draft: Draft<K>;
  /** As the club has it. */
  before: RecordOf<K> | null;
  onChange: (draft: Draft<K>) => void;
  onLeave: () => void;
  onNext: () => void;
}) {
  const { table, id, before, onChange, onLeave, onNext } = props;
  const draft = onlyWhatMatters(table.fields, props.draft);
  const records = useRecords(table.kind);
  const labels = Object.fromEntries(table.fields.map(({ name, label }) => [name, label])) as FormLabels<K>;
  const fields = useRecordFields(table.kind, draft, before, labels);
  const called = `${table.one} ${table.nameOf(draft)}`;
  const save = async (more: boolean) => {
    if (id === null) await records.create(draft as unknown as NewRecord<K>, called);
    else await records.update({ ...draft, id } as unknown as RecordOf<K>, called);
    if (more) onNext();
    else onLeave();
  };
  const remove = () => {
    void records.remove(id ?? '', called);
    onLeave();
  };
  return (
    <RecordForm
      title={id === null ? `A new ${table.one}` : `Change ${table.nameOf(draft)}`}
      onSave={save}
      onLeave={onLeave}
      moreWord={id === null ? 'Save and add the next' : undefined}
      leaveWord={id === null ? 'Not now' : 'Leave unchanged'}
      wrong={fields.wrong}
      onRemove={id === null ? undefined : remove}
    >
      {table.fields
        .filter(({ when = () => true }) => when(draft))
        .map((field) => (
          <TableFieldInput
            key={field.name}
            field={field}
            fields={fields}
            value={Reflect.get(draft, field.name)}
            onChange={(value) => onChange({ ...props.draft, [field.name]: value })}
          />
        ))}
    </RecordForm>
  );
}
