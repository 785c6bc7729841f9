package commonsheet.chart.bitmap;

/** A picture's colours and lightness, looked at as they are or mirrored about the diagonal. */
record View(Raster raster, Shade shade) {
  static View of(Raster raster) {
    return new View(raster, raster.shade());
  }

  View transposed() {
    return new View(raster.transposed(), shade.transposed());
  }
}
