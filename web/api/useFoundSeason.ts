import { useQueryClient } from '@tanstack/react-query';
import type { MoreLifters, NewSeason } from '#contract/season/newSeason.ts';
import { useToast } from '#web/parts/Toast.tsx';
import { refreshClub } from './refreshClub.ts';
import { request } from './request.ts';
import { useUndo } from './useUndo.ts';

/** Makes a season with its method, meets and lifters by one change; gives back its id. */
export function useFoundSeason(): (asked: NewSeason) => Promise<string> {
  const client = useQueryClient();
  const say = useToast();
  const undo = useUndo();
  return async (asked) => {
    const { seasonId, seq } = await request<{ seasonId: string; seq: number }>('POST', '/api/seasons', asked);
    await refreshClub(client);
    say(`Added ${asked.title}.`, () => undo(seq));
    return seasonId;
  };
}

/** Takes more lifters into a season, all of them for the same meets and by one change. */
export function useJoinSeason(seasonId: string): (asked: MoreLifters) => Promise<void> {
  const client = useQueryClient();
  const say = useToast();
  const undo = useUndo();
  return async (asked) => {
    const path = `/api/seasons/${encodeURIComponent(seasonId)}/lifters`;
    const { seq } = await request<{ seq: number }>('POST', path, asked);
    await refreshClub(client);
    const count = asked.lifterIds.length;
    say(`Added ${count} ${count === 1 ? 'lifter' : 'lifters'}.`, () => undo(seq));
  };
}
