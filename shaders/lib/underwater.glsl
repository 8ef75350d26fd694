/*
 * underwater: how a colour looks through the water between it and the eye: tinted, and dimmer the deeper it is.
 * colour, water: linear colours. height_mm: over still water; nothing changes above 0. Gives a linear colour.
 */
vec3 underwater(vec3 colour, float height_mm, vec3 water) {
  const float AT_ONCE = 0.2; // share of water colour just under the surface, so that wet and dry differ at a glance
  const float DEEPEST = 0.5; // never so much that wood and lead look the same
  const float FADE_MM = 60.0; // a bait's depth and its hooks'
  const float WATER_LIGHT = 0.6; // what the water itself sends back; the rest is the colour behind it
  const float LIGHT_LEFT = 0.78; // of what falls on it from above, far down; drawn stronger than water is
  float depth_mm = max(-height_mm, 0.0);
  float share = mix(AT_ONCE, DEEPEST, 1.0 - exp(-depth_mm / FADE_MM));
  float light = mix(LIGHT_LEFT, 1.0, exp(-depth_mm / FADE_MM));
  return height_mm < 0.0 ? light * mix(colour, water * (WATER_LIGHT + colour), share) : colour;
}
