/** Rows of a table written with `|` between cells; blank lines and lines of dashes are left out. */
export function rowsOf(table: string): readonly (readonly string[])[] {
  return table
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '' && !/^[-| ]+$/.test(line))
    .map((line) => line.split('|').map((cell) => cell.trim()));
}
