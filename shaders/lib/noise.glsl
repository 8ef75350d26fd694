/*
 * noise: smooth value noise.
 * place: any three numbers without unit. Gives 0..1, the same at the same place, with cells of size 1.
 * Hash: fractional part of scaled products, enough for decoration; nothing is computed from it.
 */
float noise(vec3 place) {
  const vec3 SCATTER = vec3(0.1031, 0.11369, 0.13787); // unequal, so that no axis repeats another
  vec3 cell = floor(place);
  vec3 within = place - cell;
  within = within * within * (3.0 - 2.0 * within);
  float corner[8];
  for (int i = 0; i < 8; i++) {
    vec3 hashed = fract((cell + vec3(i & 1, (i >> 1) & 1, (i >> 2) & 1)) * SCATTER);
    hashed += dot(hashed, hashed.yzx + 19.19);
    corner[i] = fract((hashed.x + hashed.y) * hashed.z);
  }
  vec4 alongX = mix(vec4(corner[0], corner[2], corner[4], corner[6]), vec4(corner[1], corner[3], corner[5], corner[7]), within.x);
  vec2 alongY = mix(alongX.xz, alongX.yw, within.y);
  return mix(alongY.x, alongY.y, within.z);
}
