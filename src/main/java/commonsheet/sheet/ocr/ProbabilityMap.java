package commonsheet.sheet.ocr;

/** How likely each pixel of a picture belongs to the core of a line of text, 0 to 1. */
record ProbabilityMap(int width, int height, float[] values) {
  static ProbabilityMap empty(int width, int height) {
    return new ProbabilityMap(width, height, new float[width * height]);
  }

  float at(int column, int row) {
    return values[row * width + column];
  }
}
