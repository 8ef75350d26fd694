/** What a name may be, wherever one is written: so long at most, on one line, with something to see in it. */
export const NAME_RULE = { characters: 60, pattern: /^(?!\s*$)[^\p{Cc}\p{Cs}]*$/u } as const;
