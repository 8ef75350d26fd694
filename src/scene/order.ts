/**
 * What is drawn before what. Wood marks its pixels, parts in plain sight take the mark away again where they are
 * nearer, and only then do hidden parts know where they show through. Water comes last.
 */
export const ORDER = { wash: 0, wood: 1, edges: 2, parts: 3, hidden: 4, surface: 5, marks: 6 } as const;
