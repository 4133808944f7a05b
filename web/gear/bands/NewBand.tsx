import { useEffect, useRef } from 'react';
import { useLocation } from 'wouter';
import { BandForm } from './BandForm.tsx';
import { ScaleDrawing } from './ScaleDrawing.tsx';

/** The first step: what the pair is. The second is at the scale. */
export function NewBand() {
  const [, go] = useLocation();
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => place.current?.querySelector('input')?.focus(), []);
  return (
    <section className="stack">
      <h1>A new pair of bands</h1>
      <div className="beside" ref={place}>
        <div className="stack">
          <p>
            First what it is, then, with Go on, what it pulls. Two bands make a pair: write a and b on them,
            so that each keeps its own readings.
          </p>
          <BandForm pair={null} onSaved={(pair) => go(`/bands/${pair.id}`)} onLeave={() => go('/')} />
        </div>
        <ScaleDrawing show="rest" />
      </div>
    </section>
  );
}
