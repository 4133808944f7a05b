import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import type { FormLabels } from '#contract/words/formFaults.ts';
import { type NewRecord, useRecords } from '#web/api/useRecords.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';
import { CsvDoor } from './CsvDoor.tsx';
import type { Draft, SheetField } from './SheetField.ts';
import { SheetFieldInput } from './SheetFieldInput.tsx';

/** One kind of gear as a coach keeps it: a table, and beside it a form for the row that is open. */
export interface Sheet<K extends KindName> {
  kind: K;
  /** "bars" and "bar". */
  title: string;
  many: string;
  one: string;
  /** One sentence that teaches, shown while there is none. */
  teaches: string;
  nameOf: (record: RecordOf<K> | Draft<K>) => string;
  fields: readonly SheetField<K>[];
  blank: Draft<K>;
}

export function RecordSheet<K extends KindName>(props: {
  sheet: Sheet<K>;
  rows: readonly RecordOf<K>[];
  columns: readonly Column<RecordOf<K>>[];
  /** Drawn beside the form, live. */
  picture?: (draft: Draft<K> | null, openId: string | null) => ReactNode;
  heading?: 'h1' | 'h2';
}) {
  const { sheet, rows, columns, picture } = props;
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
    <section className="sheet stack" ref={place}>
      <div className="row ends base">
        <Heading>{sheet.title}</Heading>
        <button type="button" onClick={() => setOpen({ id: null, draft: sheet.blank })}>
          Add a {sheet.one}
        </button>
      </div>
      <div className={open ? 'sheet-open' : ''}>
        {open && (
          <SheetForm
            key={open.id ?? 'new'}
            sheet={sheet}
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
            <p className="quiet">{sheet.teaches}</p>
          ) : (
            <DataTable
              label={sheet.title}
              columns={columns}
              rows={rows}
              keyOf={({ id }) => id}
              nameOf={sheet.nameOf}
              onOpen={openRow}
              onLeave={close}
              selectedKey={open?.id}
            />
          )}
        </div>
      </div>
      <CsvDoor kind={sheet.kind} />
    </section>
  );
}

/** The form for one row. */
function SheetForm<K extends KindName>(props: {
  sheet: Sheet<K>;
  /** Null: a new one. */
  id: string | null;
  draft: Draft<K>;
  /** As the club has it. */
  before: RecordOf<K> | null;
  onChange: (draft: Draft<K>) => void;
  onLeave: () => void;
}) {
  const { sheet, id, draft, before, onChange, onLeave } = props;
  const records = useRecords(sheet.kind);
  const labels = Object.fromEntries(sheet.fields.map(({ name, label }) => [name, label])) as FormLabels<K>;
  const fields = useRecordFields(sheet.kind, draft, before, labels);
  const called = `${sheet.one} ${sheet.nameOf(draft)}`;
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
      title={id === null ? `A new ${sheet.one}` : `Change ${sheet.nameOf(draft)}`}
      onSave={save}
      onLeave={onLeave}
      leaveWord={id === null ? 'Not now' : 'Leave unchanged'}
      wrong={fields.wrong}
      onRemove={id === null ? undefined : remove}
    >
      {sheet.fields.map((field) => (
        <SheetFieldInput
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
