/** A column of a text table: numbers stand right, words left. */
export interface Column {
  readonly head: string;
  readonly right: boolean;
}

/**
 * Rows under heads, columns as wide as their widest cell, two spaces apart. Each line without spaces at its end. A
 * cell is measured in characters, which is right for any script that does not join or double them.
 */
export function textTable(columns: readonly Column[], rows: readonly (readonly string[])[]): readonly string[] {
  const lines = [columns.map((column) => column.head), ...rows];
  const widths = columns.map((_, i) => Math.max(...lines.map((line) => widthOf(line[i] ?? ''))));
  return lines.map((line) =>
    columns
      .map((column, i) => padded(line[i] ?? '', widths[i] ?? 0, column.right))
      .join('  ')
      .trimEnd(),
  );
}

function padded(cell: string, width: number, right: boolean): string {
  const space = ' '.repeat(width - widthOf(cell));
  return right ? space + cell : cell + space;
}

function widthOf(cell: string): number {
  return [...cell].length;
}
