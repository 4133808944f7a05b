import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import type { FormLabels } from '#contract/words/formFaults.ts';
import { type NewRecord, useRecords } from '#web/api/useRecords.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';
import { CsvDoor } from './CsvDoor.tsx';
import type { Draft, TableField } from './TableField.ts';
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
  const Heading = props.heading ?? 'h2';
  const place = useRef<HTMLElement>(null);
  const cameFrom = useRef<Element | null>(null);
  const close = () => {
    setOpen(null);
    if (cameFrom.current instanceof HTMLElement) cameFrom.current.focus();
  };
  const openKey = open && (open.id ?? 'new');
  useEffect(() => {
    if (openKey === null) return;
    cameFrom.current = document.activeElement;
    place.current?.querySelector<HTMLElement>('form input, form select')?.focus();
  }, [openKey]);
  const openRow = (record: RecordOf<K>) => {
    const { id, ...draft } = record;
    setOpen({ id, draft: draft as unknown as Draft<K> });
  };
  return (
    <section className="record-table stack" ref={place}>
      <div className="row ends base">
        <Heading>{table.title}</Heading>
        <button type="button" onClick={() => setOpen({ id: null, draft: table.blank })}>
          Add a {table.one}
        </button>
      </div>
      <div className={open ? 'record-table-open' : ''}>
        {open && (
          <TableForm
            key={open.id ?? 'new'}
            table={table}
            id={open.id}
            draft={open.draft}
            before={rows.find(({ id }) => id === open.id) ?? null}
            onChange={(draft) => setOpen({ ...open, draft })}
            onLeave={close}
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
              rows={rows}
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
}) {
  const { table, id, draft, before, onChange, onLeave } = props;
  const records = useRecords(table.kind);
  const labels = Object.fromEntries(table.fields.map(({ name, label }) => [name, label])) as FormLabels<K>;
  const fields = useRecordFields(table.kind, draft, before, labels);
  const called = `${table.one} ${table.nameOf(draft)}`;
  const save = async () => {
    if (id === null) await records.create(draft as unknown as NewRecord<K>, called);
    else await records.update({ ...draft, id } as unknown as RecordOf<K>, called);
    onLeave();
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
      leaveWord={id === null ? 'Not now' : 'Leave unchanged'}
      wrong={fields.wrong}
      onRemove={id === null ? undefined : remove}
    >
      {table.fields.map((field) => (
        <TableFieldInput
          key={field.name}
          field={field}
          fields={fields}
          value={Reflect.get(draft, field.name)}
          onChange={(value) => onChange({ ...draft, [field.name]: value })}
        />
      ))}
    </RecordForm>
  );
}
