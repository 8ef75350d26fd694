/*
 * shine: the window as a smooth surface throws it back to the eye.
 * normal, toEye: unit vectors, scene frame. narrow: how small the spot is, 1 and up. Gives 0..1.
 * Blinn's half way between light and eye (SIGGRAPH 1977).
 */
float shine(vec3 normal, vec3 toEye, float narrow) {
  const vec3 WINDOW = vec3(-0.36, 0.78, 0.51); // as in lamp.glsl
  return pow(max(0.0, dot(normal, normalize(toEye + WINDOW))), narrow);
}
