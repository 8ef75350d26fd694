/*
 * hatch: slanted strokes fixed to the screen, as a draughtsman fills what lies inside.
 * pixel: device pixels from the lower left. step_px: from stroke to stroke, device pixels. Gives 0..1.
 */
float hatch(vec2 pixel, float step_px) {
  const float STROKE = 0.3; // share of the step that is ink
  float along = fract((pixel.x + pixel.y) / step_px);
  float soft = 1.0 / step_px;
  return smoothstep(0.0, soft, along) - smoothstep(STROKE, STROKE + soft, along);
}
