import { useEffect, useState } from 'react';

/** Counts how often letters of another width have arrived: what was measured with the letters before is measured anew. */
export function useLetters(): number {
  const [arrived, setArrived] = useState(0);
  useEffect(() => {
    const more = () => setArrived((before) => before + 1);
    document.fonts.addEventListener('loadingdone', more);
    return () => document.fonts.removeEventListener('loadingdone', more);
  }, []);
  return arrived;
}
