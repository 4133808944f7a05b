import { type ReactNode, useState } from 'react';
import type { RackSheet } from '#contract/paper/RackSheetModel.ts';
import type { SheetsOf } from './useSheetsOf.ts';

/** As many pages for each rack as its lifters need: one that is too full is split evenly over one page more. */
export function PagesOfRacks(props: {
  sheetsOf: SheetsOf;
  children: (sheet: RackSheet, onTooFull: () => void) => ReactNode;
}) {
  const [parts, setParts] = useState<Readonly<Record<string, number>>>({});
  return props
    .sheetsOf((key) => parts[key] ?? 1)
    .map((sheet) =>
      props.children(sheet, () => setParts((before) => ({ ...before, [sheet.key]: sheet.parts + 1 }))),
    );
}
