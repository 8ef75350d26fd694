/** How deep a bait is drawn that does not float, fins and all: how deep it is has no answer, that it is under has; mm. */
export const UNDER_MM = 10;

/** Share of the tub's width that is kept free at each end: the line tie's eye, a nose-down bait's corners. */
export const END_SHARE = 0.05;

/** For the note that names what is drawn beside the bait, CSS pixels. */
export const NOTE_PX = 20;
