/**
 * What is drawn before what. Wood marks its pixels, parts in plain sight take the mark away again where they are
 * nearer, and only then do hidden parts know where they show through. Keep-outs lie over those; their outlines come once
 * it is known where any of them is. Water comes last.
 */
export const ORDER = {
  wash: 0,
  wood: 1,
  cutFace: 2,
  cutDepth: 3,
  edges: 4,
  parts: 5,
  hidden: 6,
  keepOuts: 7,
  keepOutEdges: 8,
  surface: 9,
  marks: 10,
} as const;
