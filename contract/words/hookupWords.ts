import type { RecordOf } from '#contract/records/allKinds.ts';

/** How a pair hangs, as a coach says it: "doubled round the low front pegs". */
export function hookupWords(
  { way }: Pick<RecordOf<'hookup'>, 'way'>,
  anchor: Pick<RecordOf<'anchor'>, 'label'>,
): string {
  const place = anchor.label.charAt(0).toLowerCase() + anchor.label.slice(1);
  switch (way) {
    case 'single':
      return `single from the ${place}`;
    case 'doubled':
      return `doubled round the ${place}`;
    case 'choked':
      return `choked on the ${place}`;
  }
}
