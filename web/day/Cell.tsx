import type { ReactNode } from 'react';

/** A cell that says its column itself where the table is folded for a narrow screen. `place`: where it then stands. */
export function Cell(props: { head: string; place?: string; children: ReactNode }) {
  return (
    <td className={props.place}>
      <span className="cell-head" aria-hidden="true">
        {props.head}
      </span>
      {props.children}
    </td>
  );
}
