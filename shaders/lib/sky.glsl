/*
 * sky: a soft sky without a sun, to be mirrored in the water.
 * direction: unit vector, scene frame (y up). horizon, zenith: linear colours. Gives a linear colour.
 */
vec3 sky(vec3 direction, vec3 horizon, vec3 zenith) {
  return mix(horizon, zenith, smoothstep(0.0, 0.9, direction.y));
}
