import { isFound } from './isFound.ts';
import { useInAddress } from './useInAddress.ts';

/** So many are seen without looking for. */
export const fewRows = 10;

/** One order of a list; `compare` as in a sort. */
export interface RowOrder<Row> {
  value: string;
  word: string;
  compare: (a: Row, b: Row) => number;
}

/** The rows as they come. */
export const asTheyCome = { value: '', word: '', compare: () => 0 };

/** How a list of more than ten is looked through: what is asked, in which order, and what is left of it. */
export interface Found<Row> {
  rows: readonly Row[];
  /** Few rows need no fields, unless the address asks for something already. */
  isLong: boolean;
  asked: string;
  setAsked: (asked: string) => void;
  order: string;
  setOrder: (order: string) => void;
  orders: readonly RowOrder<Row>[];
}

/**
 * Looks through the rows of a list for words and puts them in an order, both kept in the address; without an order asked for, the first of
 * `orders`. `textsOf`: what is written of a row; `word` names it in the address, where a page has several such lists.
 */
export function useFound<Row>(
  rows: readonly Row[],
  textsOf: (row: Row) => readonly string[],
  orders: readonly [RowOrder<Row>, ...RowOrder<Row>[]],
  word = 'find',
): Found<Row> {
  const [asked, setAsked] = useInAddress(word);
  const [orderAsked, setOrder] = useInAddress('by', orders[0].value);
  const order = orders.find(({ value }) => value === orderAsked) ?? orders[0];
  return {
    rows: rows.filter((row) => isFound(textsOf(row), asked)).sort(order.compare),
    isLong: rows.length > fewRows || asked !== '',
    asked,
    setAsked,
    order: order.value,
    setOrder,
    orders,
  };
}
