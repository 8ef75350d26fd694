import { describe, expect, it } from 'vitest';
import { citationText, placeText } from '../../../../sim/sources/cite.ts';
import { EPOXY } from '../../../../sim/tables/finishes.ts';
import { STEEL } from '../../../../sim/tables/metals.ts';

describe('where a number comes from, in words', () => {
  it('a place names the author, the year and where to look', () => {
    expect(placeText({ source: 'unesco-44', where: 'p. 19' })).toBe('Fofonoff, Millard (1983), p. 19');
  });

  it('a source whose year is not known goes without one', () => {
    expect(placeText({ source: 'callister', where: 'table B.1' })).toBe('Callister, table B.1');
  });

  it('the steel of the eyes says what is printed and where', () => {
    expect(citationText(STEEL)).toBe('Callister, table B.1, steel alloy 1040: 7.85 g/cm³');
  });

  it('the epoxy of a plug does not pretend to have a document behind it', () => {
    expect(citationText(EPOXY)).toBe('Common practice, cured epoxy, unfilled: 1.10–1.20 g/cm³, usually 1.15');
  });
});
