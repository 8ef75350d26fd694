/*
 * A part in plain sight: flat tint, light, a narrow shine, and the water over what is wet. uWet: 1, or 0 for what is shut
 * in the wood.
 */
#include <lamp>
#include <underwater>
#include <scene-normal>
#include <shine>

uniform vec3 uTint;
uniform vec3 uDeep;
uniform float uWet;

varying vec3 vScene_mm;
varying vec3 vNormal;

void main() {
  vec3 normal = sceneNormal(normalize(vNormal), viewMatrix);
  vec3 toEye = normalize(vec3(viewMatrix[0][2], viewMatrix[1][2], viewMatrix[2][2]));
  vec3 colour = uTint * lamp(normal) + 0.35 * shine(normal, toEye, 40.0);
  gl_FragColor = vec4(mix(colour, underwater(colour, vScene_mm.y, uDeep), uWet), 1.0);
  #include <colorspace_fragment>
}
