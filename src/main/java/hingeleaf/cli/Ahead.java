package hingeleaf.cli;

import hingeleaf.design.DesignDocument;
import hingeleaf.pack.Pack;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.HouseFonts;
import hingeleaf.structure.Structures;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;

/**
 * What a pack will need, begun on the other core while the command line is still being read: the
 * face, the design that the arguments seem to name, and its card made as usual. A wrong guess costs
 * nothing but that core's time; what the command line really says decides.
 */
final class Ahead {
  private static final Set<String> VERBS = Set.of("make", "check", "look", "post", "price");

  private final CompletableFuture<Fonts> face;
  private final Optional<Path> guessed;
  private final CompletableFuture<Optional<DesignDocument.Outcome>> design;
  private final CompletableFuture<Optional<Pack>> usual;

  private Ahead(Optional<Path> guessed) {
    this.guessed = guessed;
    this.design = CompletableFuture.supplyAsync(() -> guessed.flatMap(Ahead::read));
    this.face = CompletableFuture.supplyAsync(HouseFonts::read);
    this.usual = design.thenCombine(face, this::usual);
    this.usual.thenAcceptAsync(pack -> pack.filter(p -> !p.blocked()).ifPresent(Pack::made));
  }

  /** Begins what these arguments call for; empty where they make no pack. */
  static Optional<Ahead> of(List<String> args) {
    if (args.isEmpty() || !VERBS.contains(args.get(0))) {
      return Optional.empty();
    }
    return Optional.of(
        new Ahead(
            args.stream()
                .skip(1)
                .filter(a -> a.endsWith(".yaml"))
                .map(Path::of)
                .filter(Files::isRegularFile)
                .findFirst()));
  }

  private static Optional<DesignDocument.Outcome> read(Path file) {
    try {
      return Optional.of(
          DesignDocument.read(file.toString(), InputFile.read(file), Structures.FORMS));
    } catch (DoorException e) {
      return Optional.empty(); // told when the command itself reads it
    }
  }

  /** The pack of the guessed design with no wish told; nothing of it is worked out yet. */
  private Optional<Pack> usual(Optional<DesignDocument.Outcome> read, Fonts fonts) {
    try {
      return read.filter(DesignDocument.Outcome.Right.class::isInstance)
          .map(o -> ((DesignDocument.Outcome.Right) o).document())
          .map(d -> Pack.of(Common.usual(guessed.orElseThrow(), d, fonts)));
    } catch (DoorException e) {
      return Optional.empty(); // told when the command itself reads it
    }
  }

  /** The pack of a design file with no wish told, where it was the one guessed. */
  Optional<Pack> usual(Path file) {
    return guessed.filter(file::equals).flatMap(same -> usual.join());
  }

  Fonts face() {
    return face.join();
  }

  /** What came of a design file, read now unless it was the one guessed. */
  DesignDocument.Outcome design(Path file) {
    Optional<DesignDocument.Outcome> read =
        guessed.filter(file::equals).flatMap(same -> design.join());
    return read.orElseGet(
        () -> DesignDocument.read(file.toString(), InputFile.read(file), Structures.FORMS));
  }
}
