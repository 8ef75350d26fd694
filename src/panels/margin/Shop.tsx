import { type ReactNode, useEffect, useRef, useState } from 'react';
import {
  type Design,
  type DesignFile,
  fullShop,
  type Issue,
  nextDrill,
  type ShopList,
  type StockChoice,
  shopNameFault,
  stockChoices,
  stockUsers,
  withoutShopEntry,
  withShopEntry,
  withShopName,
} from '../../../sim/index.ts';
import { makeEdit } from '../../document/commands.ts';
import { NameField } from '../../ui/NameField.tsx';
import { useAmounts } from '../../view/amounts.ts';
import { useView } from '../../view/view.ts';
import { issueWords } from '../trouble/issue-words.ts';
import { FoldedAway } from './Folds.tsx';
import type { Field } from './field.ts';
import type { Fold } from './more-fields.ts';
import { keyRows, NO_ROWS } from './row-keys.ts';
import { addedWords, choiceNote, choiceWords, stayWords, THING } from './shop-words.ts';

interface ShopProps {
  readonly file: DesignFile;
  readonly design: Design | undefined;
  readonly drills: readonly Fold[];
  readonly lead: readonly Fold[];
  /** What stands against the design as it is. */
  readonly found: readonly Issue[];
  readonly issues: ReadonlyMap<Field, Issue>;
  numbers(fields: readonly Field[]): ReactNode;
}

/** What the maker owns: the lists that a plan of ballast chooses from, each of which can be added to and taken from. */
export function Shop({ drills, lead, ...shown }: ShopProps) {
  return (
    <>
      <Listed {...shown} list="drills" title="Drills" folds={drills} />
      <Listed {...shown} list="lead" title="Lead and other stock" folds={lead} />
      <p className="note">
        Lead is poisonous: wear gloves, wash your hands, melt it only in the open air. Local rules and makers’ data
        sheets come first.
      </p>
    </>
  );
}

interface ListedProps extends Pick<ShopProps, 'file' | 'design' | 'found' | 'issues' | 'numbers'> {
  readonly list: ShopList;
  readonly title: string;
  readonly folds: readonly Fold[];
}

function Listed({ file, design, list, title, folds, found, issues, numbers }: ListedProps) {
  const units = useView((view) => view.units);
  const names = folds.map((fold) => fold.title);
  const { rows, place, focusLast, hold } = useRows(names);
  const [opened, setOpened] = useState<string | null>(null);
  const [refused, setRefused] = useState<number | null>(null);
  // true of the list as it was then: undo makes it untrue
  const [said, setSaid] = useState({ words: '', of: '' });
  const standing = names.join('\n');
  const full = fullShop(file, list);

  const say = (words: string, names: readonly string[]) => {
    setRefused(null);
    setSaid({ words, of: names.join('\n') });
  };
  const added = (name: string, kind: StockChoice['kind'] | 'drill') => {
    focusLast();
    setOpened(name);
    say(addedWords(name, kind), [...names, name]);
  };
  const remove = (index: number, key: number) => {
    const name = names[index] ?? '';
    if (list === 'lead' && stockUsers(file, index).length > 0) return setRefused(key);
    makeEdit(`remove ${THING[list]} ${name}`, (design) => withoutShopEntry(design, list, index));
    say(`“${name}” removed. Undo brings it back.`, names.toSpliced(index, 1));
  };

  const heading = `shop-${list}`;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset within a fieldset would have a rule above it
    <div className="shop-list" role="group" aria-labelledby={heading} ref={place}>
      <h3 id={heading}>{title}</h3>
      {rows.length === 0 && <p>None on the list.</p>}
      <ul onFocus={hold} onBlur={hold}>
        {rows.map(({ key, name }, i) => {
          const { fields } = folds[i] ?? { fields: [] };
          const wrong = found.find(({ path }) => path === `shop.${list}.${i}.name`);
          const stays = refused === key ? stayWords(name, stockUsers(file, i)) : null;
          return (
            <li key={key} data-row={key}>
              <FoldedAway
                title={name}
                isWrong={wrong !== undefined || fields.some((field) => issues.has(field))}
                startsOpen={name === opened}
              >
                {() => (
                  <>
                    <NameField
                      label="Name"
                      value={name}
                      complaint={wrong === undefined ? null : issueWords(wrong, units)}
                      refuse={(wanted) => shopNameFault(file, list, i, wanted)}
                      onCommit={(wanted) =>
                        makeEdit(`name of ${THING[list]} ${name}`, (design) => withShopName(design, list, i, wanted))
                      }
                    />
                    {numbers(fields)}
                    {list === 'lead' && <p className="note">{kindWords(file, i)}</p>}
                  </>
                )}
              </FoldedAway>
              <button
                type="button"
                className="remove"
                aria-label={`Remove ${THING[list]} ${name}`}
                onClick={() => remove(i, key)}
              >
                Remove
              </button>
              {stays !== null && (
                <p className="complaint" role="alert">
                  {stays}
                </p>
              )}
            </li>
          );
        })}
      </ul>
      {full !== null ? (
        <p className="note">Nothing more can be added: {full}.</p>
      ) : list === 'drills' ? (
        <AddDrill file={file} design={design} onAdded={added} />
      ) : (
        <AddStock file={file} design={design} onAdded={added} />
      )}
      <p className="note" role="status">
        {said.of === standing ? said.words : ''}
      </p>
    </div>
  );
}

/** How lead of this kind goes into a hole. */
function kindWords({ shop }: DesignFile, index: number): string {
  return shop?.lead?.[index]?.kind === 'slug'
    ? 'A slug: round, of its own diameter.'
    : 'Filled in: it takes the width of its hole.';
}

interface AddProps extends Pick<ShopProps, 'file' | 'design'> {
  onAdded(name: string, kind: StockChoice['kind'] | 'drill'): void;
}

function AddDrill({ file, design, onAdded }: AddProps) {
  const units = useView((view) => view.units);
  const amounts = useAmounts();
  const entry = nextDrill(file, design?.worked);
  return (
    <button
      type="button"
      className="act lesser add"
      onClick={() => {
        makeEdit(`add drill ${entry.name}`, (design) => withShopEntry(design, 'drills', entry));
        onAdded(entry.name, 'drill');
      }}
    >
      Add a drill: {entry.name}
      {units === 'mm-g' && `, ${amounts.length(Number(entry.diameter_mm))}`}
    </button>
  );
}

function AddStock({ file, design, onAdded }: AddProps) {
  const amounts = useAmounts();
  const [isOpen, setOpen] = useState(false);
  return (
    <details className="fold add-stock" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className="add">Add stock</summary>
      {isOpen && (
        <ul>
          {stockChoices(file, design?.worked).map((choice, i) => (
            <li key={choice.entry.name}>
              <button
                type="button"
                className="act lesser"
                aria-describedby={`stock-choice-${i}`}
                onClick={() => {
                  setOpen(false);
                  const { entry, kind } = choice;
                  makeEdit(`add stock ${entry.name}`, (design) => withShopEntry(design, 'lead', entry));
                  onAdded(entry.name, kind);
                }}
              >
                {choiceWords(choice)}
              </button>
              <span className="note" id={`stock-choice-${i}`}>
                {choiceNote(choice, amounts)}
              </span>
            </li>
          ))}
        </ul>
      )}
    </details>
  );
}

/**
 * The rows of a list by their names, and where the focus goes when they change: to one that is added, open; from one that
 * is taken away or undone to what stands in its place.
 */
function useRows(names: readonly string[]) {
  const [keyed, setKeyed] = useState(() => keyRows(NO_ROWS, names));
  if (keyed.rows.length !== names.length || keyed.rows.some(({ name }, i) => name !== names[i])) {
    setKeyed(keyRows(keyed, names));
  }
  const place = useRef<HTMLDivElement>(null);
  const held = useRef<{ readonly key: string; readonly index: number } | null>(null);
  const isAdded = useRef(false);

  useEffect(() => {
    const rows = [...(place.current?.querySelectorAll<HTMLElement>('[data-row]') ?? [])];
    const nameOf = (row: HTMLElement | undefined) => row?.querySelector('summary');
    if (isAdded.current && keyed.rows.length > 0) {
      isAdded.current = false;
      nameOf(rows.at(-1))?.focus();
      return;
    }
    const { key, index } = held.current ?? {};
    if (key === undefined || rows.some(({ dataset }) => dataset.row === key)) return;
    held.current = null;
    // a browser gives the focus of what is gone to the page
    if (document.activeElement !== document.body) return;
    (nameOf(rows[index ?? 0] ?? rows.at(-1)) ?? place.current?.querySelector<HTMLElement>('.add'))?.focus();
  }, [keyed]);

  return {
    rows: keyed.rows,
    place,
    /** The next row to come is put on at the end. */
    focusLast: () => {
      isAdded.current = true;
    },
    /** Takes note of the row that has the focus; React tells of no blur when a row is taken away with it. */
    hold: (event: { readonly type: string; readonly target: Element }) => {
      const row = event.target.closest<HTMLElement>('[data-row]');
      const rows = [...(place.current?.querySelectorAll('[data-row]') ?? [])];
      held.current =
        event.type === 'blur' || row === null ? null : { key: row.dataset.row ?? '', index: rows.indexOf(row) };
    },
  };
}
