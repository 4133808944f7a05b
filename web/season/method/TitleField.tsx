import { fieldOf } from '#contract/records/fields.ts';
import { method } from '#contract/records/method.ts';
import { textLimits } from '#web/parts/limits.ts';
import { TextField } from '#web/parts/TextField.tsx';
import { useMethodFields } from './methodFields.ts';

/** What a method is called. */
export function TitleField({ title, onChange }: { title: string; onChange: (title: string) => void }) {
  const field = useMethodFields('');
  return (
    <div className="season-double">
      <TextField
        {...field('title', 'Title')}
        {...textLimits(fieldOf('title', method.shape.title))}
        value={title}
        onChange={onChange}
      />
    </div>
  );
}
