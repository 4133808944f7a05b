/** What the walk found wrong with a page of paper, in a sentence each, and how small its letters are in pt. */
export interface PaperFaults {
  faults: string[];
  leastReadPt: number;
  leastFinePt: number;
}

/**
 * Measures every visible letter of every paper on the page, inside the browser: its size, whether it leaves its page or its card,
 * and whether two texts, or a text and a drawing, lie over one another.
 */
export function paperFaults(papers: readonly Element[]): PaperFaults {
  const faults: string[] = [];
  const sizesPt: { read: number[]; fine: number[] } = { read: [], fine: [] };
  type Box = { left: number; right: number; top: number; bottom: number; said: string; of: Element };
  // A line's box is taller than its figures: in Archivo they stand between these shares of it.
  const [figuresFrom, figuresTo] = [0.18, 0.81];
  const slackPx = 1;
  for (const paper of papers) {
    const boxes: Box[] = [];
    const walker = document.createTreeWalker(paper, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const of = node.parentElement!;
      const said = node.textContent!.trim();
      if (said === '' || !of.checkVisibility()) continue;
      // A CSS pixel is three quarters of a point.
      const sizePt = Number.parseFloat(getComputedStyle(of).fontSize) * 0.75;
      sizesPt[of.closest('.fine') ? 'fine' : 'read'].push(sizePt);
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const { left, right, top, height } of range.getClientRects())
        boxes.push({
          left,
          right,
          top: top + figuresFrom * height,
          bottom: top + figuresTo * height,
          said,
          of: node.parentElement!,
        });
    }
    for (const drawing of paper.querySelectorAll('svg:not(.cut-marks)')) {
      if (!drawing.checkVisibility()) continue;
      const { left, right, top, bottom } = drawing.getBoundingClientRect();
      boxes.push({
        left,
        right,
        top,
        bottom,
        said: drawing.getAttribute('aria-label') ?? 'a drawing',
        of: drawing,
      });
    }
    for (const box of boxes) {
      for (const frame of [paper, box.of.closest('.card')]) {
        if (!frame) continue;
        const edge = frame.getBoundingClientRect();
        if (
          box.left < edge.left - slackPx ||
          box.right > edge.right + slackPx ||
          box.top < edge.top - slackPx ||
          box.bottom > edge.bottom + slackPx
        )
          faults.push(`"${box.said}" leaves its ${frame === paper ? 'page' : 'card'}`);
      }
    }
    boxes.forEach((one, i) => {
      for (const other of boxes.slice(i + 1)) {
        const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
        const down = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
        // What is written in a drawing lies on it.
        const isWithin = other.of instanceof SVGSVGElement && other.of.contains(one.of);
        if (isWithin) continue;
        if (across > slackPx && down > slackPx && !(one.of === other.of && one.said === other.said))
          faults.push(`"${one.said}" and "${other.said}" lie over one another`);
      }
    });
  }
  return {
    faults,
    leastReadPt: Math.min(...sizesPt.read),
    leastFinePt: Math.min(...sizesPt.fine),
  };
}
