/*
 * dashDot: which places along a line are ink, long and short by turns, as drawings have what is not there itself.
 * along_mm: place along the line. Gives 0 or 1.
 */
float dashDot(float along_mm) {
  const float REPEAT_MM = 7.0;
  const float DASH_MM = 4.0;
  const float DOT_MM = 0.8;
  const float GAP_MM = 0.5 * (REPEAT_MM - DASH_MM - DOT_MM);
  float within_mm = mod(along_mm, REPEAT_MM);
  float dash = step(within_mm, DASH_MM);
  float dot_ = step(DASH_MM + GAP_MM, within_mm) * step(within_mm, DASH_MM + GAP_MM + DOT_MM);
  return max(dash, dot_);
}
