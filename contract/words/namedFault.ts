import type { Fault } from '#contract/records/Fault.ts';

/** The field of a record in which a fault lies: of `setup.bands[1].hookupId` it is `setup`. */
export function topField({ field }: Fault): string {
  return field.split(/[.[]/, 1)[0] ?? '';
}

/** The sentence of a fault with the name that the reader knows its field by, and nothing where there is nothing. */
export function namedFault(fault: Fault, name: string | undefined): string {
  const top = topField(fault);
  const message = fault.message.replace(/ is null;/, ' is empty;');
  return name !== undefined && top !== '' && message.startsWith(top)
    ? name + message.slice(top.length)
    : message;
}
