/** A row of a list that can be edited, and what React knows it by. */
interface KeyedRow {
  readonly key: number;
  readonly name: string;
}

export interface RowKeys {
  readonly rows: readonly KeyedRow[];
  /** The key of the next row that comes in. */
  readonly next: number;
}

export const NO_ROWS: RowKeys = { rows: [], next: 0 };

/**
 * The rows as they are called now. Who is called as before is who it was; where just one is called otherwise, it has been
 * renamed, and stays open with the focus where it is.
 */
export function keyRows(before: RowKeys, names: readonly string[]): RowKeys {
  const isRenamed =
    names.length === before.rows.length && names.filter((name, i) => name !== before.rows[i]?.name).length === 1;
  const left = [...before.rows];
  let { next } = before;
  const rows = names.map((name): KeyedRow => {
    const at = isRenamed ? 0 : left.findIndex((row) => row.name === name);
    const [known] = at === -1 ? [] : left.splice(at, 1);
    return { key: known?.key ?? next++, name };
  });
  return { rows, next };
}
