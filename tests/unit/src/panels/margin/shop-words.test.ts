import { describe, expect, test } from 'vitest';
import { stockChoices } from '../../../../../sim/design/shop-defaults.ts';
import { amountsIn, type StockUser } from '../../../../../sim/index.ts';
import { addedWords, choiceNote, choiceWords, stayWords } from '../../../../../src/panels/margin/shop-words.ts';
import { makeDesignFile } from '../../../../support/make-design.ts';

const user = (setup: string, hole: string, isDone = false): StockUser => ({ setup, hole, isDone });

describe('Why stock stays', () => {
  test('is nothing where no hole holds it', () => {
    expect(stayWords('rod', [])).toBeNull();
  });

  test('is the hole that holds it, by name and setup, with what lets it go', () => {
    expect(stayWords('rod', [user('pond', 'head 1')])).toBe(
      '“rod” stays: it is in head 1 of pond. Fill it with other stock first.',
    );
    expect(stayWords('rod', [user('pond', 'head 1'), user('pond', 'tail'), user('sea', 'head 1')])).toBe(
      '“rod” stays: it is in head 1 and tail of pond; head 1 of sea. Fill them with other stock first.',
    );
  });

  test('counts what would be too many names', () => {
    const many = ['a', 'b', 'c', 'd', 'e'].flatMap((setup) => [1, 2, 3, 4].map((n) => user(setup, `h${n}`)));
    expect(stayWords('rod', many)).toBe(
      '“rod” stays: it is in h1, h2, h3 and 1 more of a; h1, h2, h3 and 1 more of b; h1, h2, h3 and 1 more of c; 2 more setups. Fill them with other stock first.',
    );
  });

  test('asks nobody to fill anew what is glued in', () => {
    expect(stayWords('rod', [user('pond', 'head 1', true)])).toBe(
      '“rod” stays: it is in head 1 of pond. What is drilled and glued keeps its stock on the list.',
    );
  });
});

describe('A choice of stock', () => {
  const file = makeDesignFile({ shop: { drills: [{ name: '1/4 in', diameter_mm: 6.35 }] } });
  const choices = stockChoices(file, undefined);
  const metric = amountsIn('mm-g');

  test('is named for what comes onto the list', () => {
    expect(choices.map(choiceWords)).toEqual([
      'Lead rod: 1/4 in rod',
      'Shot in epoxy',
      'Poured lead',
      'Tungsten shot in epoxy',
      'Putty',
    ]);
  });

  test('says what it weighs, and into which hole it goes', () => {
    expect(choices.map((choice) => choiceNote(choice, metric))).toEqual([
      '6.3 mm thick, 11.35 g/cm³; drops into a hole of the 1/4 in drill',
      'fills a hole of any width, 7.3 g/cm³',
      'fills a hole of any width, 11.35 g/cm³',
      'fills a hole of any width, 12 g/cm³',
      'makes differ: weigh a lump, 8 g/cm³ until then',
    ]);
    const [rod] = stockChoices(makeDesignFile({ shop: {} }), undefined);
    if (rod === undefined) throw new Error('there is always a rod to add');
    expect(choiceNote(rod, metric)).toBe('6.3 mm thick, 11.35 g/cm³; wants a drill of 1/4 in');
  });

  test('is told of when it is added, with what is left to be weighed', () => {
    expect(addedWords('1/4 in', 'drill')).toBe('“1/4 in” added.');
    expect(addedWords('putty', 'putty')).toBe('“putty” added. Weigh yours, and type its density.');
  });
});
