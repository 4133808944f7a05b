import { ScaleDrawing } from './ScaleDrawing.tsx';

/** How to hang a band from a scale, beside the drawing with the same figures. */
export function HangSteps({ side }: { side: 'a' | 'b' }) {
  return (
    <div className="hang">
      <ScaleDrawing show="hang" />
      <ol className="empty-steps">
        <li>
          Hang the scale from a high rated point, band {side} from the scale, and a few discs in the band,
          held by a pin and a collar, a hand's width above the floor.
        </li>
        <li>Wait until it hangs still; read its length from end to end on the tape.</li>
        <li>
          Read the scale. Type both below, add discs, and read again: five readings from light to as long as
          you use it are a good curve.
        </li>
      </ol>
    </div>
  );
}
