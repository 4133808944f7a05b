import { useQueryClient } from '@tanstack/react-query';
import { useToast } from '#web/parts/Toast.tsx';
import { refreshClub } from './refreshClub.ts';
import { request } from './request.ts';

/** Takes a change back by its number and shows the club as it then is; where that is refused, the reason is said. */
export function useUndo(): (seq: number) => void {
  const client = useQueryClient();
  const say = useToast();
  return (seq) => {
    request('POST', `/api/undo/${seq}`)
      .then(() => refreshClub(client))
      .catch((error: Error) => say(error.message));
  };
}
