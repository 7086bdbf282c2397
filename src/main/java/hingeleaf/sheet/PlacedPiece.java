package hingeleaf.sheet;

/** A piece on a sheet: index in the job, lower left corner and size as it lies, in nm. */
public record PlacedPiece(int piece, long x, long y, long w, long h, boolean rotated) {}
