import { effortLine } from '#contract/paper/effortWords.ts';
import type { LifterLine, WrittenLoad } from '#contract/paper/RackSheetModel.ts';
import { strengthThere } from '#contract/paper/strengthThere.ts';

/** All that is known of one lifter's bar beyond the row: loads with range and share, percentages, speeds, what to mind. */
export function LineInWords({ line, unit }: { line: LifterLine; unit: string }) {
  return (
    <div className="line-in-words stack tight">
      {line.cautions.map(({ sentence }) => (
        <p key={sentence} className="caution small">
          {sentence}
        </p>
      ))}
      <p>
        At the bottom {loadInWords(line.bottom, unit)}. At lockout {loadInWords(line.lockout, unit)}.
      </p>
      <p>
        {line.percentages}, of {line.reference}.
      </p>
      <p>{effortLine(line.effort)}.</p>
      {line.assumed.length > 0 && (
        <p className="small quiet">{line.assumed.map(({ sentence }) => sentence).join(' ')}</p>
      )}
    </div>
  );
}

function loadInWords(written: WrittenLoad, unit: string): string {
  const { load, interval, habit } = written;
  const said = [`${load} ${unit}`, interval && `range ${interval}`, strengthThere(written), habit];
  return said.filter((part) => part !== '').join(', ');
}
