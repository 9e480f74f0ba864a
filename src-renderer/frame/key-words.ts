/** Keys of the menu table as they are printed on this system: "Mod+Shift+S" is "Ctrl Shift S", or the Mac's own signs. */
export function keyWords(keys: string, isMac: boolean): string {
  const words: Readonly<Record<string, string>> = isMac
    ? { Mod: '⌘', Shift: '⇧', Alt: '⌥' }
    : { Mod: 'Ctrl', Shift: 'Shift', Alt: 'Alt' };
  return keys
    .split('+')
    .map((key) => words[key] ?? key)
    .join(isMac ? '' : ' ');
}
