package hingeleaf.cli;

import hingeleaf.design.DesignDocument;
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
 * face, and the design that the arguments seem to name. A wrong guess costs nothing but that core's
 * time; what the command line really says decides.
 */
final class Ahead {
  private static final Set<String> VERBS = Set.of("make", "check", "look", "post", "price");

  private final CompletableFuture<Fonts> face;
  private final Optional<Path> guessed;
  private final CompletableFuture<Optional<DesignDocument.Outcome>> design;

  private Ahead(Optional<Path> guessed) {
    this.guessed = guessed;
    this.design = CompletableFuture.supplyAsync(() -> guessed.flatMap(Ahead::read));
    this.face = CompletableFuture.supplyAsync(HouseFonts::read);
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
