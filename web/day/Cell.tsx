import type { ReactNode } from 'react';

/** A cell that says its column itself where the table is folded for a narrow screen. */
export function Cell({ head, children }: { head: string; children: ReactNode }) {
  return (
    <td>
      <span className="cell-head" aria-hidden="true">
        {head}
      </span>
      {children}
    </td>
  );
}
