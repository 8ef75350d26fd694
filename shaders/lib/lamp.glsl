/*
 * lamp: light that falls on a surface in the workshop: a window high on the left, and the paper's own brightness.
 * normal: unit vector, scene frame (x right in the side view, y up, z towards the viewer). Gives about 0.5..1.1.
 */
float lamp(vec3 normal) {
  const vec3 WINDOW = vec3(-0.36, 0.78, 0.51); // unit length, high on the left as drawings are shaded
  const float FROM_BELOW = 0.62;
  const float FROM_ABOVE = 0.84;
  float around = mix(FROM_BELOW, FROM_ABOVE, 0.5 + 0.5 * normal.y);
  return around + 0.26 * max(dot(normal, WINDOW), 0.0);
}
