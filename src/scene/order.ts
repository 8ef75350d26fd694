/**
 * What is drawn before what. Wood marks its pixels, parts in plain sight take the mark away again where they are
 * nearer, and only then do hidden parts know where they show through. Lead lies over its plug, which in a
 * hole from the near flank stands before it, keep-outs over both; their outlines come once
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
  hiddenLead: 7,
  keepOuts: 8,
  keepOutEdges: 9,
  surface: 10,
  marks: 11,
} as const;
