/** What is wrong with a drawing, reckoned here from its marks alone: words off the paper, on each other, or too small. */
import type { Figure, Mark, PaperPoint } from '../../../src-core/figure';

/** Room of a letter as a share of the type size, and of a line above and below its baseline. */
const [LETTER_EM, ASCENT_EM, DESCENT_EM] = [0.55, 0.76, 0.22];
const LEAST_PT = 6.5;
const EPSILON_IN = 1e-6;

type Text = Extract<Mark, { kind: 'text' }>;

/** The four corners of the room that words take. */
export function corners({ words, at, sizePt, anchor, turnDeg }: Text): PaperPoint[] {
  const em = sizePt / 72;
  const width = [...words].length * LETTER_EM * em;
  const start = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
  const rad = (turnDeg * Math.PI) / 180;
  return [
    [start, -ASCENT_EM * em],
    [start + width, -ASCENT_EM * em],
    [start + width, DESCENT_EM * em],
    [start, DESCENT_EM * em],
  ].map(([x, y]) => ({
    x: at.x + x! * Math.cos(rad) - y! * Math.sin(rad),
    y: at.y + x! * Math.sin(rad) + y! * Math.cos(rad),
  }));
}

/** Whether two convex loops share room: no side of either parts them. */
export function overlap(one: readonly PaperPoint[], other: readonly PaperPoint[]): boolean {
  return ![one, other].some((loop) =>
    loop.some((a, i) => {
      const b = loop[(i + 1) % loop.length]!;
      const [nx, ny] = [b.y - a.y, a.x - b.x];
      const size = Math.hypot(nx, ny);
      const reach = (points: readonly PaperPoint[]) => points.map(({ x, y }) => (x * nx + y * ny) / size);
      const [p, q] = [reach(one), reach(other)];
      return Math.max(...p) <= Math.min(...q) + EPSILON_IN || Math.max(...q) <= Math.min(...p) + EPSILON_IN;
    }),
  );
}

function pointsOf(mark: Mark): readonly PaperPoint[] {
  switch (mark.kind) {
    case 'line':
      return [mark.from, mark.to];
    case 'run':
      return mark.points;
    case 'area':
      return mark.loops.flat();
    case 'circle': {
      const { centre, radius: r } = mark;
      return [
        { x: centre.x - r, y: centre.y - r },
        { x: centre.x + r, y: centre.y + r },
      ];
    }
    case 'text':
      return corners(mark);
  }
}

export function faultsOf({ id, title, words, widthIn, heightIn, marks }: Figure): string[] {
  const faults: string[] = [];
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id)) faults.push(`${id} is no kebab-case id`);
  if (title.length < 3 || words.length < 20) faults.push(`${id} says too little`);
  for (const mark of marks) {
    const isOff = pointsOf(mark).some(
      ({ x, y }) =>
        !(x >= -EPSILON_IN && x <= widthIn + EPSILON_IN && y >= -EPSILON_IN && y <= heightIn + EPSILON_IN),
    );
    if (isOff) faults.push(`${id}: off the paper: ${JSON.stringify(mark)}`);
  }
  const texts = marks.filter((mark) => mark.kind === 'text');
  for (const { words: own, sizePt } of texts) {
    if (sizePt < LEAST_PT) faults.push(`${id}: "${own}" is ${sizePt} pt`);
    if (own.trim() === '') faults.push(`${id}: empty words`);
  }
  const boxes = texts.map(corners);
  boxes.forEach((box, i) => {
    for (let k = 0; k < i; k++) {
      if (overlap(box, boxes[k]!)) faults.push(`${id}: "${texts[i]!.words}" on "${texts[k]!.words}"`);
    }
  });
  return faults;
}
