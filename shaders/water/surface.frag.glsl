/* The water's surface from above and below: its own colour, the sky in it, fading into the paper at the rim. */
#include <fresnel>
#include <sky>
#include <waves>

uniform vec2 uHalfSize_mm;
uniform float uFade_mm;
uniform float uRipple;
uniform float uTime_s;
uniform vec3 uWater;
uniform vec3 uSkyHorizon;
uniform vec3 uSkyZenith;

varying vec2 vPlace_mm;

void main() {
  const float STEEPEST = 0.16; // slope of a full ripple: light plays, nothing seems to toss
  const float SEEN_STRAIGHT = 0.34; // cover where one looks straight down: what is under water stays readable
  const float SEEN_FLAT = 0.72;

  vec2 slope = uRipple * STEEPEST * waveSlope(vPlace_mm, uTime_s);
  // the sheet's own y runs to starboard, away from the viewer of the side view
  vec3 upright = normalize(vec3(-slope.x, 1.0, slope.y));
  // one direction for the whole picture: the camera has no vanishing point
  vec3 toEye = normalize(vec3(viewMatrix[0][2], viewMatrix[1][2], viewMatrix[2][2]));
  float side = toEye.y < 0.0 ? -1.0 : 1.0;
  float thrownBack = fresnel(abs(dot(upright, toEye)));
  vec3 mirrored = sky(reflect(-toEye, side * upright), uSkyHorizon, uSkyZenith);

  // rounded rectangle: 0 at the rim, growing inwards
  float corner_mm = min(uHalfSize_mm.x, uHalfSize_mm.y);
  vec2 over = abs(vPlace_mm) - (uHalfSize_mm - corner_mm);
  float inside_mm = corner_mm - length(max(over, 0.0)) - min(max(over.x, over.y), 0.0);
  float rim = smoothstep(0.0, uFade_mm, inside_mm);

  float glint = uRipple * pow(max(0.0, dot(upright, normalize(toEye + vec3(-0.36, 0.78, 0.51)))), 90.0);
  vec3 colour = mix(uWater, mirrored, clamp(thrownBack, 0.0, 0.75)) + 0.25 * glint;
  gl_FragColor = vec4(colour, rim * mix(SEEN_STRAIGHT, SEEN_FLAT, thrownBack));
  #include <colorspace_fragment>
}
