/**
 * What is drawn before what. Wood marks its pixels, parts in plain sight take the mark away again where they are
 * nearer, and only then do hidden parts know where they show through. Water comes last.
 */
export const ORDER = {
  wash: 0,
  wood: 1,
  cutFace: 2,
  cutDepth: 3,
  edges: 4,
  parts: 5,
  hidden: 6,
  surface: 7,
  marks: 8,
} as const;
