/*
 * halfUnder: how far the water is drawn cut through the bait's middle, as through the glass of a tank, so that what is
 * under it is not seen through the surface before it.
 * climb: sine of the view's climb over the water, from -1 to 1. Gives 1 when one looks along the surface, 0 from above
 * or below.
 */
float halfUnder(float climb) {
  const vec2 CUT_TO_WHOLE = vec2(0.14, 0.3); // 8 and 17 degrees
  return 1.0 - smoothstep(CUT_TO_WHOLE.x, CUT_TO_WHOLE.y, abs(climb));
}
