package hingeleaf.sheet;

/** What is left over of a sheet: lower left corner and size in nm. */
public record Scrap(long x, long y, long w, long h) {}
