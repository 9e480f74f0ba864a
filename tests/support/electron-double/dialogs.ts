/** The system's dialogs: each waits until the test answers it. */

type Kind = 'showOpenDialog' | 'showSaveDialog' | 'showMessageBox';

export interface AskedDialog {
  readonly kind: Kind;
  readonly options: Readonly<Record<string, unknown>>;
  /** The window that it was asked over; null where it stands alone. */
  readonly over: unknown;
  readonly answer: (result: object) => void;
}

export interface DialogsDouble {
  readonly module: { readonly [K in Kind]: (...args: readonly unknown[]) => Promise<object> };
  /** The next dialog that comes up, now or later. */
  readonly next: () => Promise<AskedDialog>;
}

export function dialogsDouble(): DialogsDouble {
  const asked: AskedDialog[] = [];
  const waiting: ((dialog: AskedDialog) => void)[] = [];
  const show =
    (kind: Kind) =>
    (...args: readonly unknown[]): Promise<object> =>
      new Promise((answer) => {
        const over = args.length > 1 ? args[0] : null;
        const dialog = { kind, options: args.at(-1) as AskedDialog['options'], over, answer };
        const taker = waiting.shift();
        if (taker === undefined) asked.push(dialog);
        else taker(dialog);
      });
  return {
    module: {
      showOpenDialog: show('showOpenDialog'),
      showSaveDialog: show('showSaveDialog'),
      showMessageBox: show('showMessageBox'),
    },
    next: () =>
      new Promise((take) => {
        const dialog = asked.shift();
        if (dialog === undefined) waiting.push(take);
        else take(dialog);
      }),
  };
}
