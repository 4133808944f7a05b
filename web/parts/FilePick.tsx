import { useId } from 'react';

/** A button that opens the machine's own choice of files. The same file can be picked again after it was mended. */
export function FilePick(props: {
  word: string;
  accept: string;
  strong?: boolean;
  onPick: (file: File) => void;
}) {
  const id = useId();
  return (
    <>
      <label className={props.strong ? 'button strong' : 'button'} htmlFor={id}>
        {props.word}
      </label>
      <input
        id={id}
        className="only-read"
        type="file"
        accept={props.accept}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file) props.onPick(file);
        }}
      />
    </>
  );
}

/** A table saved by any spreadsheet. */
export const tableFile = '.csv,.txt,text/csv,text/plain';
