import { EventEmitter } from 'node:events';
import type { WorkTold } from '#contract/words/doing.ts';

export interface WorkNews {
  tell(told: WorkTold): void;
  /** Calls back with whatever is told, until the returned function is called. */
  onTold(listener: (told: WorkTold) => void): () => void;
}

/** From the work to whoever listens for the club's news. */
export function workNews(): WorkNews {
  const news = new EventEmitter<{ told: [WorkTold] }>().setMaxListeners(0);
  return {
    tell: (told) => void news.emit('told', told),
    onTold(listener) {
      news.on('told', listener);
      return () => void news.off('told', listener);
    },
  };
}
