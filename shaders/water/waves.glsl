/*
 * waveSlope: how a few crossing ripples tilt the water.
 * place_mm: on still water. time_s: since they began. Gives the slope along both axes, about -1..1.
 * Only the light follows it; the surface itself stays at 0, where the sums have it.
 */
vec2 waveSlope(vec2 place_mm, float time_s) {
  const float TURN = 6.2831853;
  const int COUNT = 6;
  vec2 slope = vec2(0.0);
  float length_mm = 41.0; // about a link's length
  float heading = 0.5;
  for (int i = 0; i < COUNT; i++) {
    vec2 direction = vec2(cos(heading), sin(heading));
    float phase = TURN * dot(direction, place_mm) / length_mm + time_s * (3.2 + 0.7 * float(i));
    slope += direction * cos(phase) / float(COUNT);
    length_mm *= 0.81; // never a whole ratio, so that the pattern does not repeat
    heading += 2.4; // the golden angle: no two run alike
  }
  return slope;
}
