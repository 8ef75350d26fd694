/** The most entries in each list of the shop. */
export const SHOP_LIMITS = { drills: 200, lead: 40 } as const;
