/** The system's dialogs: each waits until the test answers it. */

type Kind = 'showOpenDialog' | 'showSaveDialog' | 'showMessageBox';

export interface AskedDialog {
  readonly kind: Kind;
  readonly options: Readonly<Record<string, unknown>>;
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
        const dialog = { kind, options: args.at(-1) as AskedDialog['options'], answer };
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
