import { useId, useState } from 'react';
import { useWrong } from './useWrong.ts';
import { wrongText } from './wrongText.ts';

/**
 * What every field for text has in common: an id, what is wrong once it was left, and what its element is given beside its kind and its
 * change. What is wrong keeps the form from being saved from the first letter on.
 */
export function useText<Element extends HTMLInputElement | HTMLTextAreaElement>(
  props: Parameters<typeof wrongText>[0] & { error?: string | null | undefined; id?: string | undefined },
) {
  const ownId = useId();
  const id = props.id ?? ownId;
  const [left, setLeft] = useState(false);
  const wrong = wrongText(props);
  const error = (left ? wrong : null) ?? props.error;
  const ref = useWrong<Element>(wrong ?? props.error ?? null);
  return {
    id,
    error,
    element: {
      ref,
      id,
      className: 'input',
      autoComplete: 'off',
      value: props.value,
      'aria-invalid': error ? true : undefined,
      'aria-describedby': error ? `${id}-error` : undefined,
      onInvalid: () => setLeft(true),
    },
  };
}
