/** The menu, as data: the desktop host builds the system's menu from it, the window its own menu and its shortcuts. */

export interface MenuItem {
  /** Command of the window, kebab-case. */
  readonly command: string;
  readonly label: string;
  /** Keys as "Mod+Shift+S": Mod is Command on a Mac and Control elsewhere. */
  readonly keys?: string;
  /** Draws a rule above it. */
  readonly startsGroup?: boolean;
}

export interface Menu {
  readonly label: string;
  readonly items: readonly MenuItem[];
}

export const MENUS: readonly Menu[] = [
  {
    label: 'File',
    items: [
      { command: 'new-job', label: 'New job...', keys: 'Mod+Alt+N' },
      { command: 'open-job', label: 'Open...', keys: 'Mod+O' },
      { command: 'open-example', label: 'Open an example...' },
      { command: 'save-job', label: 'Save', keys: 'Mod+S', startsGroup: true },
      { command: 'save-job-as', label: 'Save as...', keys: 'Mod+Shift+S' },
      { command: 'build-book', label: 'Build book...', keys: 'Alt+B', startsGroup: true },
      { command: 'export', label: 'Export...', keys: 'Mod+Shift+E' },
    ],
  },
  {
    label: 'Edit',
    items: [
      { command: 'undo', label: 'Undo', keys: 'Mod+Z' },
      { command: 'redo', label: 'Redo', keys: 'Mod+Shift+Z' },
      { command: 'add-piece', label: 'Add a piece...', keys: 'Alt+N', startsGroup: true },
      { command: 'duplicate-selection', label: 'Duplicate', keys: 'Mod+D' },
      { command: 'remove-selection', label: 'Remove', keys: 'Delete' },
    ],
  },
  {
    label: 'View',
    items: [
      { command: 'view-model', label: 'Model', keys: 'Alt+1' },
      { command: 'view-plan', label: 'Plan', keys: 'Alt+2' },
      { command: 'view-both', label: 'Both', keys: 'Alt+3' },
      { command: 'switch-units', label: 'Inches or millimetres', keys: 'Alt+U', startsGroup: true },
      { command: 'switch-theme', label: 'Light or dark', keys: 'Alt+T' },
    ],
  },
  {
    label: 'Help',
    items: [
      { command: 'quick-check', label: 'Quick check...', keys: 'Alt+Q' },
      { command: 'show-keys', label: 'Keys', keys: 'F1' },
      { command: 'about', label: 'About Ledgewright' },
    ],
  },
];
