import { describe, expect, it } from 'vitest';
import { speedsOf, wrongSpeeds } from './SpeedsField.tsx';

describe('speeds as people type them', () => {
  it.each(['0.62, 0.58', '0.62 0.58', '0.62,0.58', '0,62; 0,58', '0,62 0,58'])('%s is two speeds', (text) => {
    expect(speedsOf(text)).toEqual([0.62, 0.58]);
  });

  it('are one, or one for each rep made', () => {
    expect(wrongSpeeds('Mean speed', '', 3)).toBeNull();
    expect(wrongSpeeds('Mean speed', '0.5', 3)).toBeNull();
    expect(wrongSpeeds('Mean speed', '0.5 0.4 0.3', 3)).toBeNull();
    expect(wrongSpeeds('Mean speed', '0.5 0.4', 3)).toContain('one for each rep made (3)');
  });

  it('are refused where they are no speeds of a bar', () => {
    expect(wrongSpeeds('Mean speed', 'fast', 1)).toContain('"fast"; write it as 0.62');
    expect(wrongSpeeds('Mean speed', '0,62,0,58', 2)).toContain('"0,62,0,58"; write it as 0.62');
    expect(wrongSpeeds('Mean speed', '62', 1)).toContain('0 to 5 m/s');
  });
});
