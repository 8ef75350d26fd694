/*
 * drawnLine: how much of a pixel is covered by a line of even width on the screen.
 * distance: any smooth field that is 0 along the line. width_px: device pixels. Gives 0..1.
 * Dividing by the field's own change from pixel to pixel turns it into pixels, however the surface lies.
 */
float drawnLine(float distance, float width_px) {
  float perPixel = max(length(vec2(dFdx(distance), dFdy(distance))), 1e-6);
  return clamp(0.5 + 0.5 * width_px - abs(distance) / perPixel, 0.0, 1.0);
}
