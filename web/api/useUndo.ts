import { useQueryClient } from '@tanstack/react-query';
import { useToast } from '#web/parts/Toast.tsx';
import { request } from './request.ts';
import { clubKey } from './useClub.ts';

/** Takes a change back by its number and shows the club as it then is; where that is refused, the reason is said. */
export function useUndo(): (seq: number) => void {
  const client = useQueryClient();
  const say = useToast();
  return (seq) => {
    request('POST', `/api/undo/${seq}`)
      .then(() => client.invalidateQueries({ queryKey: clubKey }))
      .catch((error: Error) => say(error.message));
  };
}
