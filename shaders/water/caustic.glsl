/*
 * caustic: soft net of light that ripples throw on what is under them, fading with depth.
 * scene_mm: y over still water. lit: 0..1, how far the surface faces the light. time_s: as the waves have it. Gives a
 * share of light to add, 0 over water. A hint only: still water keeps its last pattern.
 */
float caustic(vec3 scene_mm, float lit, float time_s) {
  const vec2 SLANT = vec2(-0.46, 0.65); // the window's sideways part over its height, as in lamp.glsl
  const float FADE_MM = 22.0;
  const float STRENGTH = 0.16;
  const float SHARP = 3.0;
  if (scene_mm.y >= 0.0) return 0.0;
  // where the ray that arrives here went through the surface; the surface's own y is -z
  vec2 through_mm = (scene_mm.xz - SLANT * scene_mm.y) * vec2(1.0, -1.0);
  float focus = 1.0 - min(1.0, 2.0 * length(waveSlope(through_mm, time_s)));
  return STRENGTH * lit * pow(focus, SHARP) * exp(scene_mm.y / FADE_MM);
}
