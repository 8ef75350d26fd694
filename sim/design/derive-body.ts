import { backOf, deepestOf, tailOf, widestOf } from './body-defaults.ts';
import type { Body, Fullness, Section } from './design.ts';
import { notBuilt } from './not-built.ts';
import type { WorkedFile } from './work-out.ts';

type WorkedBody = WorkedFile['body'];

/** A quarter that nobody asked anything of is an ellipse, which fills this share of its box. */
const ELLIPSE_FULLNESS = Math.PI / 4;
/** Greatest breadth half way up. */
const MIDDLE = 0.5;

/** The body with every default filled in. Lengths are in mm in the file and here. */
export function bodyFrom(body: WorkedBody): Body {
  return {
    length: body.length_mm,
    height: body.height_mm,
    width: body.width_mm,
    back: backOf(body),
    deepest: deepestOf(body),
    widest: widestOf(body),
    fullness: { back: fullnessFrom(body.back), belly: fullnessFrom(body.belly), plan: fullnessFrom(body.plan) },
    tail: tailOf(body),
    section: sectionFrom(body.section),
  };
}

function fullnessFrom(entry: WorkedBody['back']): Fullness {
  return { nose: entry?.nose_fullness ?? ELLIPSE_FULLNESS, tail: entry?.tail_fullness ?? ELLIPSE_FULLNESS };
}

function sectionFrom(section: WorkedBody['section']): Section {
  if (section.kind === 'board') throw notBuilt('board', 'body.section.kind');
  return { kind: 'oval', above: section.above, below: section.below, breadth: section.breadth ?? MIDDLE };
}
