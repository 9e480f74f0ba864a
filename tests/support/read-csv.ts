/** Reads lists back that leave as CSV. */

/** Cells of RFC 4180 text, read letter by letter; throws where it ends within a row. */
export function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let isQuoted = false;
  for (let i = 0; i < text.length; i++) {
    const letter = text[i]!;
    if (isQuoted) {
      if (letter !== '"') cell += letter;
      else if (text[i + 1] === '"') cell += text[++i];
      else isQuoted = false;
    } else if (letter === '"') isQuoted = true;
    else if (letter === ',') {
      row.push(cell);
      cell = '';
    } else if (letter === '\r' && text[i + 1] === '\n') {
      rows.push([...row, cell]);
      row = [];
      cell = '';
      i++;
    } else cell += letter;
  }
  if (isQuoted || cell !== '' || row.length > 0) throw new Error('the text ends within a row');
  return rows;
}
