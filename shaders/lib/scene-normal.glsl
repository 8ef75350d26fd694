/*
 * sceneNormal: turns a normal from view space back into the scene, where the lamp hangs.
 * normal: unit vector in view space. view: the view matrix, of which only the turn is used. Gives a unit vector.
 */
vec3 sceneNormal(vec3 normal, mat4 view) {
  return normalize(normal * mat3(view));
}
