import { type ReactNode, useState } from 'react';
import { inPages } from './inPages.ts';

/** One page of a list: its rows, its place, and whom it tells that it is too full; nobody where a page holds one row. */
export interface FittedPage<Row> {
  rows: readonly Row[];
  page: number;
  pages: number;
  onTooFull: (() => void) | undefined;
}

/** As few pages as hold all rows, about equally long: one that is too full is split over one page more. */
export function FittedPages<Row>(props: {
  rows: readonly Row[];
  children: (page: FittedPage<Row>) => ReactNode;
}) {
  const { rows } = props;
  const [parts, setParts] = useState(1);
  const onTooFull = parts < rows.length ? () => setParts(parts + 1) : undefined;
  return inPages(rows, Math.max(1, Math.ceil(rows.length / parts))).map((some, at, all) =>
    props.children({ rows: some, page: at + 1, pages: all.length, onTooFull }),
  );
}
