/** What one expression of a design may hold. Generous for a maker, far too little for a computation. */
export const EXPRESSION_LIMITS = { characters: 120, parts: 40, depth: 12 } as const;
