/** The one store of the window. Its job changes only through the commands of src-core; views read it and never alter it. */
import { create } from 'zustand';
import type { Command, History } from '../../src-core/edit';
import { beginHistory, recordStep, redoStep, sealStep, undoStep } from '../../src-core/edit';
import type { Job, JobProblem } from '../../src-core/job';
import type { Point } from '../../src-core/outline';
import type { Selection } from './selection';

/** What a builder asks, in the order of the job; the question changes what stands at the right. */
export type Question = 'draw' | 'stand' | 'compare' | 'hold' | 'buy' | 'pour';
export type Shown = 'model' | 'plan' | 'both';
export type Theme = 'light' | 'dark';
export type ModelMap = 'none' | 'bending' | 'deflected';

/** What is open over the drawing; null where nothing is. */
export type Sheet =
  | { readonly kind: 'quick-check' }
  | { readonly kind: 'add-piece' }
  | { readonly kind: 'open-file' }
  | { readonly kind: 'save-file' }
  | { readonly kind: 'open-example' }
  | { readonly kind: 'recover' }
  /** Unsaved changes stand before what `goOn` does. */
  | { readonly kind: 'unsaved'; readonly goOn: () => void }
  | { readonly kind: 'build-book' }
  | { readonly kind: 'export' }
  | { readonly kind: 'keys' }
  | { readonly kind: 'about' }
  | { readonly kind: 'manual'; readonly id: string };

/** A sentence that stays until it is read or replaced. */
export interface Notice {
  readonly tone: 'plain' | 'trouble';
  readonly sentence: string;
  readonly details?: readonly string[];
}

export interface OpenFile {
  /** null for a job that was never saved. */
  readonly path: string | null;
  readonly name: string;
  /** The job as it stands in the file; null where it stands in none. */
  readonly savedJob: Job | null;
  /** True for work that stands in no file though nothing was done to it since, such as what was recovered. */
  readonly isRecovered: boolean;
}

/** Where both views are asked to go. `at` is a point of the plan; each request has a number of its own. */
export interface FlyTo {
  readonly pieceId: string;
  readonly at: Point | null;
  readonly request: number;
}

export interface ModelOptions {
  readonly map: ModelMap;
  /** The slab is seen through, with its steel and standoffs inside. */
  readonly isSeeThrough: boolean;
  /** Height of the cut through the job as a share of it, null for no cut. */
  readonly cutShare: number | null;
  /** 0 together, 1 pulled apart. */
  readonly explodeShare: number;
  readonly showsReactions: boolean;
  readonly showsPerson: boolean;
}

export interface WindowState {
  readonly history: History;
  readonly file: OpenFile;
  readonly question: Question;
  readonly shown: Shown;
  readonly theme: Theme;
  readonly selection: Selection | null;
  readonly hover: Selection | null;
  readonly sheet: Sheet | null;
  readonly notice: Notice | null;
  /** Key of the check whose workings are open. */
  readonly openCheck: string | null;
  readonly flyTo: FlyTo | null;
  readonly model: ModelOptions;
  /** Day that the playhead of the day line stands on; null for the finished job. */
  readonly day: number | null;
  /** Whether a drag is going on: answers are coarse until it ends. */
  readonly isDragging: boolean;

  /** Runs a command; what it refused is given back and leaves all as it was. */
  readonly run: <Args>(command: Command<Args>, args: Args) => readonly JobProblem[];
  readonly beginDrag: () => void;
  readonly endDrag: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Puts another job in place of this one, with a history of its own. */
  readonly openJob: (job: Job, file: OpenFile) => void;
  readonly markSaved: (path: string, name: string, job: Job) => void;
  readonly select: (selection: Selection | null) => void;
  readonly setHover: (selection: Selection | null) => void;
  readonly ask: (question: Question) => void;
  readonly show: (shown: Shown) => void;
  readonly setTheme: (theme: Theme) => void;
  readonly openSheet: (sheet: Sheet | null) => void;
  readonly say: (notice: Notice | null) => void;
  /** Opens the workings of a check and sends both views to its point; null closes them. */
  readonly lookAtCheck: (check: { key: string; pieceId: string; at: Point | null } | null) => void;
  readonly setModel: (options: Partial<ModelOptions>) => void;
  readonly setDay: (day: number | null) => void;
}

/** The store begins with a job, so that no view has to ask whether there is one. */
export function createWindowStore(job: Job, theme: Theme) {
  return create<WindowState>()((set, get) => ({
    history: beginHistory(job),
    file: { path: null, name: job.name, savedJob: null, isRecovered: false },
    question: 'stand',
    shown: 'model',
    theme,
    selection: { pieceId: job.pieces[0]!.id, part: { kind: 'piece' } },
    hover: null,
    sheet: null,
    notice: null,
    openCheck: null,
    flyTo: null,
    model: {
      map: 'bending',
      isSeeThrough: false,
      cutShare: null,
      explodeShare: 0,
      showsReactions: false,
      showsPerson: true,
    },
    day: null,
    isDragging: false,

    run: (command, args) => {
      const { history, selection } = get();
      const edited = command.perform(history.job, args);
      if (!edited.ok) return edited.problems;
      set({
        history: recordStep(history, edited),
        selection: stillThere(edited.job, selection),
        notice: null,
      });
      return [];
    },
    beginDrag: () => set({ isDragging: true }),
    endDrag: () => set(({ history }) => ({ isDragging: false, history: sealStep(history) })),
    undo: () => set(({ history, selection }) => moveTo(undoStep(history), selection)),
    redo: () => set(({ history, selection }) => moveTo(redoStep(history), selection)),
    openJob: (opened, file) =>
      set({
        history: beginHistory(opened),
        file,
        selection: { pieceId: opened.pieces[0]!.id, part: { kind: 'piece' } },
        hover: null,
        openCheck: null,
        flyTo: null,
        day: null,
        sheet: null,
        notice: null,
      }),
    markSaved: (path, name, saved) => set({ file: { path, name, savedJob: saved, isRecovered: false } }),
    select: (selection) =>
      set(({ flyTo }) => ({
        selection,
        // a view that is shown later must not fly to a piece that was left
        flyTo: flyTo?.pieceId === selection?.pieceId ? flyTo : null,
      })),
    setHover: (hover) => set({ hover }),
    ask: (question) => set({ question }),
    show: (shown) => set({ shown }),
    setTheme: (next) => set({ theme: next }),
    openSheet: (sheet) => set({ sheet }),
    say: (notice) => set({ notice }),
    lookAtCheck: (check) =>
      set(({ flyTo }) =>
        check === null
          ? { openCheck: null }
          : {
              openCheck: check.key,
              flyTo: { pieceId: check.pieceId, at: check.at, request: (flyTo?.request ?? 0) + 1 },
              selection: { pieceId: check.pieceId, part: { kind: 'piece' } },
            },
      ),
    setModel: (options) => set(({ model }) => ({ model: { ...model, ...options } })),
    setDay: (day) => set({ day }),
  }));
}

export type WindowStore = ReturnType<typeof createWindowStore>;

/** Whether the job differs from what stands in its file. */
export function isUnsaved({ history, file }: WindowState): boolean {
  return (
    file.savedJob !== history.job && (file.savedJob !== null || file.isRecovered || history.past.length > 0)
  );
}

function moveTo(history: History, selection: Selection | null): Partial<WindowState> {
  // what was said of the step that is taken back, or of what was refused before it, no longer holds
  return { history, selection: stillThere(history.job, selection), isDragging: false, notice: null };
}

/** The selection, or the piece it lay in, or the first piece, whichever the job still has. */
function stillThere(job: Job, selection: Selection | null): Selection | null {
  if (selection === null) return null;
  const { pieceId, part } = selection;
  const piece = job.pieces.find(({ id }) => id === pieceId);
  if (piece === undefined) return { pieceId: job.pieces[0]!.id, part: { kind: 'piece' } };
  const has = (things: readonly { readonly id: string }[], id: string) =>
    things.some((thing) => thing.id === id);
  const isThere = (): boolean => {
    switch (part.kind) {
      case 'piece':
        return true;
      case 'corner':
      case 'edge':
        return part.index < piece.corners.length;
      case 'cutout':
        return has(piece.cutouts, part.id);
      case 'support':
        return has(piece.supports, part.id);
      case 'load':
        return has(piece.loads.fixed, part.id);
      case 'steel':
        return has(piece.reinforcement, part.id);
      case 'joint':
        return has(piece.joints, part.id);
    }
  };
  return isThere() ? selection : { pieceId, part: { kind: 'piece' } };
}
