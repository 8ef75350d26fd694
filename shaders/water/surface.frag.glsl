/*
 * The water's surface from above and below: its own colour, the sky in it, fading into the paper all round. Flat, at
 * still water: ripples turn the light, never the surface.
 */
precision highp float;

#include <fresnel>
#include <half-under>
#include <noise>
#include <shine>
#include <sky>
#include <waves>

uniform float uReach_mm;
uniform float uRipple;
uniform float uTime_s;
uniform vec3 uWater;
uniform vec3 uSkyHorizon;
uniform vec3 uSkyZenith;

varying vec2 vPlace_mm;

void main() {
  const vec3 WINDOW = vec3(-0.36, 0.78, 0.51); // as in lamp.glsl
  const float STEEPEST = 0.26; // slope of a full ripple: light plays, nothing seems to toss
  const float SEEN_STRAIGHT = 0.27; // cover where one looks straight down: what is under water stays readable
  const float SEEN_FLAT = 0.6;
  const float MOST_SKY = 0.75; // the rest stays water, or a flat view would show bare paper
  const float SHADED = 2.0; // a ripple's far side shows more water, as a brush would have it
  const float GLINT = 0.25;
  const float RIM = 0.35; // share of the reach over which the surface fades
  const float BRUSH_MM = 30.0; // a wash on paper is never quite even
  const float BRUSH = 0.3;
  const float CUT_MM = 0.5; // soft, so that the edge is no staircase

  vec2 slope = uRipple * STEEPEST * waveSlope(vPlace_mm, uTime_s);
  // the sheet's own y runs to starboard, away from the viewer of the side view
  vec3 upright = normalize(vec3(-slope.x, 1.0, slope.y));
  // one direction for the whole picture: the camera has no vanishing point
  vec3 toEye = normalize(vec3(viewMatrix[0][2], viewMatrix[1][2], viewMatrix[2][2]));
  float side = toEye.y < 0.0 ? -1.0 : 1.0;
  float thrownBack = fresnel(abs(dot(upright, toEye)));
  vec3 mirrored = sky(reflect(-toEye, side * upright), uSkyHorizon, uSkyZenith);

  // vPlace_mm.y runs away from the viewer of the side view, as -z does
  vec2 towardsEye = normalize(vec2(toEye.x, -toEye.z) + vec2(0.0, -1e-4));
  float before = smoothstep(0.0, CUT_MM, dot(vPlace_mm, towardsEye));
  float kept = 1.0 - before * halfUnder(toEye.y);

  float rim = 1.0 - smoothstep(1.0 - RIM, 1.0, length(vPlace_mm) / uReach_mm);
  float brush = 1.0 + BRUSH * (noise(vec3(vPlace_mm / BRUSH_MM, 0.0)) - 0.5);
  float glint = uRipple * shine(upright, toEye, 90.0);
  vec3 colour = mix(uWater, mirrored, clamp(thrownBack, 0.0, MOST_SKY));
  colour += GLINT * glint;
  float shade = max(0.0, 1.0 - SHADED * dot(slope, vec2(WINDOW.x, -WINDOW.z)));
  gl_FragColor = vec4(colour, kept * min(1.0, rim * brush * shade * mix(SEEN_STRAIGHT, SEEN_FLAT, thrownBack)));
  #include <colorspace_fragment>
}
