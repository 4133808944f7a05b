import type { ReactNode } from 'react';
import { SelectField } from './SelectField.tsx';
import { TextField } from './TextField.tsx';
import type { Found } from './useFound.ts';

/** The fields above a long list: words to look for, the order, and what else narrows it. */
export function FindFields<Row>(props: {
  found: Found<Row>;
  /** What the words are looked for in: "Name, label or note". */
  label: string;
  /** Given where the list is long though what else narrows it has left few of it. */
  isLong?: boolean;
  children?: ReactNode;
}) {
  const { found } = props;
  if (!found.isLong && !props.isLong) return null;
  return (
    <search className="fields find-fields screen-only">
      <TextField label={props.label} value={found.asked} onChange={found.setAsked} />
      {found.orders.length > 1 && (
        <SelectField
          label="In order of"
          value={found.order}
          options={found.orders}
          onChange={found.setOrder}
        />
      )}
      {props.children}
    </search>
  );
}
