import { backOf, deepestOf, noseOf, tailOf, widestOf } from './body-defaults.ts';
import type { Body, Fullness, Section } from './design.ts';
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
    nose: noseOf(body),
    tail: tailOf(body),
    section: sectionFrom(body.section),
    readings: (body.readings ?? []).map((reading) => ({
      x: reading.x_mm,
      height: reading.height_mm ?? null,
      back: reading.back_mm ?? null,
      belly: reading.belly_mm ?? null,
      width: reading.width_mm ?? null,
    })),
  };
}

function fullnessFrom(entry: WorkedBody['back']): Fullness {
  return { nose: entry?.nose_fullness ?? ELLIPSE_FULLNESS, tail: entry?.tail_fullness ?? ELLIPSE_FULLNESS };
}

function sectionFrom(section: WorkedBody['section']): Section {
  if (section.kind === 'board') {
    return { kind: 'board', backEdge: section.back_edge_mm, bellyEdge: section.belly_edge_mm };
  }
  return { kind: 'oval', above: section.above, below: section.below, breadth: section.breadth ?? MIDDLE };
}
