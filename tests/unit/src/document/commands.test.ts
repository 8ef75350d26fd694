import { beforeEach, describe, expect, test } from 'vitest';
import { withValueAt } from '../../../../sim/design/place.ts';
import {
  cancelPreview,
  chooseSetup,
  keepTried,
  makeEdit,
  makeProposed,
  openDesign,
  previewEdit,
  putBackTried,
  redo,
  tryProposed,
  undo,
} from '../../../../src/document/commands.ts';
import { documentStore } from '../../../../src/document/store.ts';
import { makeDesignFile } from '../../../support/make-design.ts';

const FILE = makeDesignFile();
const toLength = (mm: number) => (file: typeof FILE) => withValueAt(file, 'body.length_mm', mm);

const now = () => documentStore.getState();
const length = () => now().file?.body.length_mm;
const steps = () => documentStore.temporal.getState().pastStates.length;

beforeEach(() => openDesign(FILE, 'boathouse-plain'));

test('A design is opened in its first setup, with no history', () => {
  makeEdit('length', toLength(130));
  openDesign(FILE, 'boathouse-plain');
  expect(now()).toMatchObject({ file: FILE, setup: 'still pond', edited: '', preset: 'boathouse-plain' });
  expect(steps()).toBe(0);
});

test('An edit is one undo step, named for what it changed', () => {
  makeEdit('length', toLength(130));
  expect(length()).toBe(130);
  expect(now().edited).toBe('length');
  expect(steps()).toBe(1);
  undo();
  expect(now().file).toBe(FILE);
  redo();
  expect(length()).toBe(130);
  expect(now().edited).toBe('length');
});

test('An edit that changes nothing is no undo step', () => {
  makeEdit('length', (file) => file);
  expect(steps()).toBe(0);
});

test('However far a number is dragged, it is one undo step back to where the hand took hold', () => {
  for (const mm of [121, 122, 123, 124]) previewEdit(toLength(mm));
  expect(length()).toBe(124);
  expect(steps()).toBe(0);
  makeEdit('length', toLength(125));
  expect(length()).toBe(125);
  expect(steps()).toBe(1);
  undo();
  expect(now().file).toBe(FILE);
});

test('A drag that is given up leaves what was there, and no undo step', () => {
  previewEdit(toLength(150));
  cancelPreview();
  expect(now().file).toBe(FILE);
  expect(steps()).toBe(0);
  makeEdit('length', toLength(130));
  expect(steps()).toBe(1);
});

test('Undo in the middle of a drag gives up the drag first', () => {
  makeEdit('width', (file) => withValueAt(file, 'body.width_mm', 22));
  previewEdit(toLength(150));
  undo();
  expect(now().file).toBe(FILE);
});

describe('Choosing a setup', () => {
  const two = makeDesignFile({
    setups: ['low', 'high'].map((name) => ({ ...FILE.setups[0], name }) as (typeof FILE.setups)[number]),
  });
  beforeEach(() => openDesign(two, null));

  test('is looking, not editing: no undo step', () => {
    chooseSetup('high');
    expect(now().setup).toBe('high');
    expect(steps()).toBe(0);
  });

  test('and undoing an edit brings back the setup in which it was made', () => {
    chooseSetup('high');
    makeEdit('length', toLength(130));
    chooseSetup('low');
    undo();
    expect(now().setup).toBe('high');
    expect(now().file).toBe(two);
  });
});

describe('What is proposed', () => {
  const wider = { says: 'make it 22 mm wide', sets: [{ path: 'body.width_mm', value: 22 }] } as const;
  const width = () => now().file?.body.width_mm;
  const future = () => documentStore.temporal.getState().futureStates.length;

  test('is made as one undo step by its own name', () => {
    makeProposed(wider);
    expect(width()).toBe(22);
    expect(now().edited).toBe('make it 22 mm wide');
    expect(steps()).toBe(1);
    undo();
    expect(now().file).toBe(FILE);
  });

  test('and tried is seen, but is no undo step until it is kept', () => {
    tryProposed(wider);
    expect(width()).toBe(22);
    expect(now().tried).toBe(wider);
    expect(steps()).toBe(0);
    keepTried();
    expect(width()).toBe(22);
    expect(now()).toMatchObject({ tried: null, edited: 'make it 22 mm wide' });
    expect(steps()).toBe(1);
    undo();
    expect(now().file).toBe(FILE);
  });

  test('and tried is put back without a trace in the history, whatever lies ahead in it', () => {
    makeEdit('length', toLength(130));
    undo();
    tryProposed(wider);
    putBackTried();
    expect(now()).toMatchObject({ file: FILE, tried: null, edited: '' });
    expect([steps(), future()]).toEqual([0, 1]);
    redo();
    expect(length()).toBe(130);
  });

  test('and tried is what undo puts back, and no step before it; redo puts it back and goes on', () => {
    makeEdit('length', toLength(130));
    tryProposed(wider);
    undo();
    expect(now()).toMatchObject({ tried: null });
    expect([length(), width()]).toEqual([130, FILE.body.width_mm]);
    undo();
    expect(length()).toBe(FILE.body.length_mm);
    tryProposed(wider);
    redo();
    expect(now().tried).toBeNull();
    expect([length(), width()]).toEqual([130, FILE.body.width_mm]);
  });

  test('and tried is kept first, as a step of its own, by a number that is changed in it', () => {
    tryProposed(wider);
    cancelPreview();
    expect(now().tried).toBe(wider);
    previewEdit(toLength(128));
    expect([length(), width(), steps()]).toEqual([128, 22, 1]);
    makeEdit('length', toLength(130));
    expect([length(), width(), steps()]).toEqual([130, 22, 2]);
    undo();
    expect([length(), width()]).toEqual([FILE.body.length_mm, 22]);
    undo();
    expect(now().file).toBe(FILE);
  });

  test('and tried ends with the drag it began in, and with another design', () => {
    previewEdit(toLength(150));
    tryProposed(wider);
    expect([length(), width()]).toEqual([FILE.body.length_mm, 22]);
    openDesign(FILE, null);
    expect(now()).toMatchObject({ file: FILE, tried: null });
    makeEdit('length', toLength(130));
    expect(steps()).toBe(1);
  });

  test('and tried is put back when another setup is looked at', () => {
    tryProposed(wider);
    chooseSetup('still pond');
    expect(now()).toMatchObject({ file: FILE, tried: null });
    expect(steps()).toBe(0);
  });
});
