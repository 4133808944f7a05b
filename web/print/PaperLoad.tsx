import type { WrittenLoad } from '#contract/paper/RackSheetModel.ts';

/** A load on paper: underlined with dashes where it rests on an assumption, `est.` where on an estimate, as on screen. */
export function PaperLoad({ load, unit }: { load: WrittenLoad; unit: string }) {
  const dashed = load.known === 'assumed' || load.known === 'notMeasured';
  return (
    <>
      <b className={dashed ? 'dashed' : undefined}>{load.load}</b> {unit}
      {load.known === 'estimated' && ' est.'}
    </>
  );
}
