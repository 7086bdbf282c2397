package hingeleaf.cli;

import hingeleaf.mend.MeasuredBench;
import hingeleaf.mend.Measures;
import hingeleaf.mend.Rescued;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The files that a rescue writes: the new design, and a bench file where a paper or a die was
 * measured.
 *
 * @param design that is read
 * @param out the new design; null where none is wanted
 * @param benchOut the new bench file, where it was named
 */
record RescueFiles(Path design, @Nullable Path out, @Nullable Path benchOut) {
  /** Refuses what would replace what is read, or put two files in one place. */
  void check(Optional<Path> bench) {
    if (out != null && same(out, design)) {
      throw usage("--out " + out + " would replace the design itself; give another name");
    }
    if (out != null && bench.isPresent() && same(out, bench.get())) {
      throw usage("--out " + out + " would replace the bench file; give another name");
    }
    if (benchOut != null && same(benchOut, design)) {
      throw usage("--bench-out " + benchOut + " would replace the design; give another name");
    }
    if (out != null && benchOut != null && (same(out, benchOut) || absolute(out, benchOut))) {
      throw usage("--out and --bench-out name one file; give two");
    }
  }

  /** The new bench file: as named, or beside the new design; empty where none is to be written. */
  Optional<Path> bench(Measures measures) {
    if (!MeasuredBench.needed(measures)) {
      if (benchOut != null) {
        throw usage("--bench-out: neither a paper nor a die was measured, so the bench stays");
      }
      return Optional.empty();
    }
    return Optional.ofNullable(benchOut)
        .or(() -> Optional.ofNullable(out).map(RescueFiles::beside));
  }

  private static Path beside(Path out) {
    String name = String.valueOf(out.getFileName()).replaceAll("\\.[^.]*$", "");
    return out.resolveSibling(name + "-bench.yaml");
  }

  /** Writes both or none; a bench file that nobody named is never replaced by another. */
  void write(Rescued rescued, Optional<Path> bench, String benchText) {
    Map<Path, byte[]> files = new LinkedHashMap<>();
    bench.ifPresent(
        b -> {
          byte[] text = benchText.getBytes(StandardCharsets.UTF_8);
          if (benchOut == null && Files.exists(b) && !holds(b, text)) {
            throw usage(b + " is there already; name the new bench file with --bench-out FILE");
          }
          files.put(b, text);
        });
    if (out != null) {
      files.put(out, rescued.text().getBytes(StandardCharsets.UTF_8));
    }
    OutputFile.write(files);
  }

  private static boolean holds(Path file, byte[] text) {
    try {
      return Arrays.equals(Files.readAllBytes(file), text);
    } catch (IOException e) {
      return false;
    }
  }

  private static DoorException usage(String sentence) {
    return new DoorException(Exit.USAGE, sentence);
  }

  private static boolean absolute(Path a, Path b) {
    return Objects.equals(a.toAbsolutePath().normalize(), b.toAbsolutePath().normalize());
  }

  private static boolean same(Path a, Path b) {
    try {
      return Files.exists(a) && Files.exists(b) && Files.isSameFile(a, b);
    } catch (IOException e) {
      throw new DoorException(Exit.FILES, a + " cannot be read: " + e.getMessage());
    }
  }
}
