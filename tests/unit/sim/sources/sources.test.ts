import { describe, expect, it } from 'vitest';
import { SOURCES, type Source } from '../../../../sim/sources/sources.ts';

const sources: [string, Source][] = Object.entries(SOURCES);

describe('the list of sources', () => {
  it.each(sources)('%s says who, what and where', (_key, source) => {
    for (const text of [source.author, source.title, source.where]) expect(text.trim()).not.toBe('');
  });

  it.each(sources)('%s has a year of print, or says it has none', (_key, source) => {
    if (source.year === null) return;
    expect(source.year).toBeGreaterThan(1900);
    expect(source.year).toBeLessThan(2027);
  });

  it('lists no title twice', () => {
    const titles = sources.map(([, source]) => source.title);
    expect(new Set(titles).size).toBe(titles.length);
  });

  it('only common practice and textbook mechanics stand without a document', () => {
    const without = sources.filter(([, source]) => source.seen === 'nowhere').map(([key]) => key);
    expect(without).toEqual(['mechanics', 'common-practice']);
  });
});
