import type { ReactNode } from 'react';
import type { RackSheet } from '#contract/paper/RackSheetModel.ts';

/** Above the lifters of a page: which rack, what is done there, when, and which page of how many; the day's title and note below. */
export function SheetHead({ sheet, children }: { sheet: RackSheet; children: ReactNode }) {
  return (
    <>
      <header className="sheet-head">
        <h1>{sheet.rack}</h1>
        <div>
          <p className="sheet-group">{sheet.group}</p>
          {children}
        </div>
        <div className="sheet-date">
          <p>
            <strong>{sheet.date}</strong>
          </p>
          <p>
            {sheet.club}
            {sheet.invented && ' (invented)'}
          </p>
          <p>
            Page {sheet.page} of {sheet.pages}
          </p>
        </div>
      </header>
      {(sheet.title || sheet.note) && (
        <p className="sheet-note">
          <b>{sheet.title}</b> {sheet.note && <b>Note:</b>} {sheet.note}
        </p>
      )}
    </>
  );
}
