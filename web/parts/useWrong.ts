import { type RefObject, useEffect, useRef } from 'react';

/** Tells the form that this field is wrong, by the browser's own validity; nothing is drawn by the browser. */
export function useWrong<
  Control extends HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement = HTMLInputElement,
>(sentence: string | null): RefObject<Control | null> {
  const control = useRef<Control>(null);
  useEffect(() => control.current?.setCustomValidity(sentence ?? ''), [sentence]);
  return control;
}
