/*
 * fresnel: share of light that still water throws back.
 * cosine: of the angle between the ray and the upright, 0..1. Gives 0.02..1.
 * Schlick's approximation; 0.02 = ((n - 1) / (n + 1))^2 for water, n = 1.333.
 */
float fresnel(float cosine) {
  const float STRAIGHT_DOWN = 0.02;
  return STRAIGHT_DOWN + (1.0 - STRAIGHT_DOWN) * pow(1.0 - clamp(cosine, 0.0, 1.0), 5.0);
}
