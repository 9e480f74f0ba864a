/** Keeps the verdict beside the drawing: a quick look at once while something changes, the whole check as soon as it rests. */
import type { Job, Piece } from '../../src-core/job';
import type { PieceResult } from '../../src-core/verdict';
import type { Lane } from '../worker/lane';
import { openLane } from '../worker/lane';
import type { FromWorker, Quality } from '../worker/messages';
import type { PieceVerdict } from './verdict-store';
import { useVerdicts } from './verdict-store';
import type { WindowStore } from './window-store';

/** A drag that rests this long is taken for done, ms. */
const REST_MS = 200;
/** A quick look may be this many changes behind when it answers. */
const MOST_ON_THE_WAY = 100;

interface Loop {
  readonly deflect: (pieceId: string) => void;
  readonly close: () => void;
}

interface Aside {
  readonly run: number;
  readonly look: (result: PieceResult) => void;
  readonly answer: (result: PieceResult | null) => void;
}

let loop: Loop | null = null;
let asideLane: Lane | null = null;
let aside: Aside | null = null;
let asideRun = 0;

/** Starts checking what the store holds, now and after every change; gives the way to stop. */
export function startVerdictLoop(store: WindowStore): () => void {
  loop?.close();
  const started = openLoop(store);
  loop = started;
  return () => {
    started.close();
    if (loop === started) loop = null;
  };
}

/** Asks for the bent shape of a piece; it arrives in the verdict store. */
export function requestDeflected(pieceId: string): void {
  loop?.deflect(pieceId);
}

/**
 * Checks a piece of a job that is not the one in the window, such as a version beside it. `onLook` gets its checks as soon as
 * they are known; the promise waits for the changes that pass. null where a newer question overtook this one, or the piece is not
 * in the job.
 */
export function checkAside(
  job: Job,
  pieceId: string,
  onLook: (result: PieceResult) => void = () => undefined,
): Promise<PieceResult | null> {
  asideLane ??= openLane(hearAside);
  aside?.answer(null);
  const run = ++asideRun;
  const lane = asideLane;
  return new Promise((answer) => {
    aside = { run, look: onLook, answer };
    lane.send({ kind: 'check', run, quality: 'fine', job, pieceIds: [pieceId] });
  });
}

function hearAside(message: FromWorker): void {
  if (aside === null || !('run' in message) || message.run !== aside.run) return;
  const { answer, look } = aside;
  if (message.kind === 'piece' && message.isSearching) look(message.result);
  else if (message.kind === 'piece') {
    aside = null;
    answer(message.result);
  } else if (message.kind === 'end' || message.kind === 'fault') {
    aside = null;
    answer(null);
  }
}

function openLoop(store: WindowStore): Loop {
  let version = 0;
  let checkedJob: Job | null = null;
  /** Version of the answer that is shown, and the pieces that each version was about. */
  const shownVersion = new Map<string, number>();
  let waiting: { readonly job: Job; readonly pieceIds: readonly string[] } | null = null;
  let rest: ReturnType<typeof setTimeout> | undefined;
  /** When each version came about that may still be answered. */
  const changedAtMs = new Map<number, number>();
  const warmed = new Set<Lane>();

  const coarse = openLane((message) => {
    // what takes a twentieth of a second needs no word on how far it has come
    if (message.kind !== 'progress') hear(message);
    if (message.kind !== 'end') return;
    if (waiting === null) {
      warmUp(coarse);
      return;
    }
    const { job, pieceIds } = waiting;
    waiting = null;
    coarse.send({ kind: 'check', run: version, quality: 'coarse', job, pieceIds });
  });
  const fine = openLane((message) => {
    hear(message);
    if (message.kind === 'end' && !message.wasCancelled) warmUp(fine);
  });

  function hear(message: FromWorker): void {
    switch (message.kind) {
      case 'ready':
        return;
      case 'piece':
        takePiece(message);
        return;
      case 'change':
        takeChange(message);
        return;
      case 'progress':
        if (message.run === version) useVerdicts.setState({ progress: message });
        return;
      case 'job':
        if (message.run === version) useVerdicts.setState({ job: message.result });
        return;
      case 'deflected':
        useVerdicts.setState({ deflected: message.shape });
        return;
      case 'end':
        if (message.run === version && fine.isIdle()) useVerdicts.setState({ progress: null });
        return;
      case 'fault':
        useVerdicts.setState({ fault: message.sentence });
    }
  }

  function takePiece({ run, quality, result, map, isSearching }: Extract<FromWorker, { kind: 'piece' }>) {
    const shown = shownVersion.get(result.id) ?? -1;
    const { pieces } = useVerdicts.getState();
    const before = pieces[result.id];
    const isOlder = run < shown || (run === shown && quality === 'coarse' && before?.quality === 'fine');
    if (isOlder || (quality === 'coarse' && run !== version && before?.isStale !== true)) return;
    shownVersion.set(result.id, run);
    const taken: PieceVerdict = {
      // a run that was overtaken may have told of changes already; they stay while the search goes on
      result,
      map,
      quality,
      isSearching,
      isStale: run !== version && store.getState().history.job !== checkedJob,
    };
    useVerdicts.setState({ pieces: { ...pieces, [result.id]: taken }, fault: null });
    const start = changedAtMs.get(run);
    // from the change to its answer, for the browser's own timeline
    if (start !== undefined)
      performance.measure(measured(quality, isSearching), { start, detail: { pieceId: result.id } });
  }

  function takeChange({ run, change }: Extract<FromWorker, { kind: 'change' }>) {
    const { pieces } = useVerdicts.getState();
    const verdict = pieces[change.pieceId];
    if (run !== version || verdict === undefined) return;
    const { result } = verdict;
    if (result.changes.some(({ id }) => id === change.id)) return;
    const changed = { ...verdict, result: { ...result, changes: [...result.changes, change] } };
    useVerdicts.setState({ pieces: { ...pieces, [change.pieceId]: changed } });
  }

  function keepTimes(): void {
    changedAtMs.set(version, performance.now());
    for (const run of changedAtMs.keys()) if (run < version - MOST_ON_THE_WAY) changedAtMs.delete(run);
  }

  function startFine(): void {
    clearTimeout(rest);
    const { history, selection, sheet } = store.getState();
    // behind the quick check nobody sees this job, and its own piece wants the machine
    if (sheet?.kind === 'quick-check') return;
    const { job } = history;
    const ids = job.pieces.map(({ id }) => id);
    const first = selection?.pieceId ?? ids[0]!;
    const pieceIds = [first, ...ids.filter((id) => id !== first)];
    fine.send({ kind: 'check', run: version, quality: 'fine', job, pieceIds });
    warmUp(coarse);
  }

  /** Once for each lane, when it has nothing to do: a lane that has checked one piece only is still slow. */
  function warmUp(lane: Lane): void {
    const { history, selection, sheet } = store.getState();
    if (warmed.has(lane) || sheet?.kind === 'quick-check' || !lane.isIdle()) return;
    warmed.add(lane);
    const pieceId = selection?.pieceId ?? history.job.pieces[0]!.id;
    lane.send({ kind: 'warm', run: version, job: history.job, pieceId });
  }

  function startCoarse(job: Job, pieceIds: readonly string[]): void {
    if (pieceIds.length === 0) return;
    if (coarse.isIdle()) coarse.send({ kind: 'check', run: version, quality: 'coarse', job, pieceIds });
    else waiting = { job, pieceIds };
  }

  function changed(): void {
    const { history, isDragging } = store.getState();
    const { job } = history;
    if (job !== checkedJob) {
      const touched = changedPieces(checkedJob, job);
      const isOtherJob = checkedJob !== null && checkedJob.id !== job.id;
      checkedJob = job;
      version++;
      keepTimes();
      fine.cancel();
      markStale(job, touched, isOtherJob);
      startCoarse(job, touched);
      clearTimeout(rest);
      if (isDragging) rest = setTimeout(startFine, REST_MS);
      else startFine();
    }
  }

  const stop = store.subscribe((state, before) => {
    if (state.history.job !== before.history.job) changed();
    else if (before.isDragging && !state.isDragging) startFine();
    else if (before.sheet?.kind === 'quick-check' && state.sheet?.kind !== 'quick-check') startFine();
  });
  changed();
  return {
    deflect: (pieceId) =>
      fine.send({ kind: 'deflect', run: version, job: store.getState().history.job, pieceId }),
    close: () => {
      stop();
      clearTimeout(rest);
      coarse.close();
      fine.close();
    },
  };
}

function measured(quality: Quality, isSearching: boolean): string {
  if (quality === 'coarse') return 'coarse verdict';
  return isSearching ? 'fine verdict' : 'fine verdict with the way there';
}

/** Ids of the pieces whose answer may differ between two jobs. */
function changedPieces(before: Job | null, after: Job): string[] {
  const isSameRound =
    before !== null &&
    before.mixes === after.mixes &&
    before.swap === after.swap &&
    before.site === after.site &&
    before.shownIn === after.shownIn;
  const known = new Map<string, Piece>(before?.pieces.map((piece) => [piece.id, piece]));
  return after.pieces.filter((piece) => !isSameRound || known.get(piece.id) !== piece).map(({ id }) => id);
}

/** What was said of the changed pieces holds no more; pieces that are gone, and all of another job, are forgotten. */
function markStale(job: Job, touched: readonly string[], isOtherJob: boolean): void {
  const { pieces } = useVerdicts.getState();
  const next: Record<string, PieceVerdict> = {};
  for (const { id } of isOtherJob ? [] : job.pieces) {
    const verdict = pieces[id];
    if (verdict !== undefined) next[id] = touched.includes(id) ? { ...verdict, isStale: true } : verdict;
  }
  useVerdicts.setState({ pieces: next, job: null, deflected: null });
}
