import { type RefObject, useEffect, useRef } from 'react';

/** Tells the form that this field is wrong, by the browser's own validity; nothing is drawn by the browser. */
export function useWrong(sentence: string | null): RefObject<HTMLInputElement | null> {
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => input.current?.setCustomValidity(sentence ?? ''), [sentence]);
  return input;
}
