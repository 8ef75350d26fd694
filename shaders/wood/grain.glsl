/*
 * grain: year rings of a plank whose heart lies under the bait, cut by its surface.
 * place_mm: body frame, x along the grain. Gives 0 (spring wood) .. 1 (late wood); evens out where rings come closer
 * than pixels.
 */
float grain(vec3 place_mm) {
  const vec2 HEART_MM = vec2(14.0, -46.0); // off the centre plane, so that port and starboard differ as in real wood
  const float RING_MM = 2.6;
  const vec3 WANDER = vec3(0.012, 0.06, 0.06); // rings wander slowly along the grain
  float ring = (length(place_mm.yz - HEART_MM) + 5.0 * noise(place_mm * WANDER)) / RING_MM;
  float within = fract(ring);
  float late = smoothstep(0.25, 0.9, within) * (1.0 - smoothstep(0.93, 1.0, within));
  float fibre = noise(place_mm * vec3(0.12, 2.2, 2.2));
  float perPixel = fwidth(ring);
  return mix(0.75 * late + 0.25 * fibre, 0.4, smoothstep(0.3, 0.8, perPixel));
}
